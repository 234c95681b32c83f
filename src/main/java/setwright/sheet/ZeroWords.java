package setwright.sheet;

import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import setwright.job.ZeroFinding;
import setwright.location.Dial;
import setwright.location.layout.EdgeFind;
import setwright.shop.Axis;
import setwright.shop.Machine;

/** How zero is found, with the offset of the tip and its sign, and how it is found again, for this machine's axes. */
record ZeroWords(ZeroFinding way, Machine machine) {
    /** What to do to have nought at the datum. */
    String find() {
        return switch (way) {
            case EDGES -> edge("left edge", EdgeFind.Side.LEFT) + "; " + edge("front edge", EdgeFind.Side.FRONT);
            case JAW_AND_STOP ->
                "stop: touch its face from the right, spindle half the tip beyond, " + set("X", "plus")
                        + "; solid jaw: touch it from the front, spindle half the tip before it, " + set("Y", "minus");
            case BETWEEN_EDGES ->
                "touch left and right, go back half of the way between and set X to nought; front and back the same for"
                        + " Y: the tip cancels";
            case BORE_SWEPT -> "sweep the bore until the indicator stands still all round, set X and Y to nought";
            case DEVICE_CENTRE ->
                "sweep the bore of the device until the indicator stands still all round, set X and Y to nought";
            case SCRIBED_LINES -> "bring the point of the centre finder over the lines, set X and Y to nought";
        };
    }

    private String edge(String edge, EdgeFind.Side side) {
        boolean left = side == EdgeFind.Side.LEFT;
        return edge + ": touch it from the " + (left ? "left" : "front") + ", spindle half the tip before it, "
                + set(left ? "X" : "Y", side.lesser() ? "minus" : "plus");
    }

    /** A readout takes the sign; a dial is wound on by half the tip and set to nought. */
    private String set(String name, String sign) {
        return switch (axis(name).read()) {
            case READOUT -> "set " + name + " to " + sign + " half the tip";
            case DIAL ->
                sign.equals("minus")
                        ? "lift, wind on by half the tip, set the " + name + " dial to nought"
                        : "lift, wind back past it and come on to half the tip, set the " + name + " dial to nought";
        };
    }

    private Axis axis(String name) {
        return name.equals("X") ? machine.x() : machine.y();
    }

    /** What the dials are worth, from which side to come, and by how much to go past; empty where both axes have readouts. */
    String dials() {
        List<String> dials = Stream.of("X", "Y")
                .filter(name -> axis(name).read() == Axis.ReadBy.DIAL)
                .map(this::dial)
                .toList();
        return String.join("; ", dials);
    }

    private String dial(String name) {
        Axis axis = axis(name);
        int divisions = Dial.exact(axis.perTurn().inside())
                .divide(Dial.exact(axis.division().inside()), MathContext.DECIMAL64)
                .intValue();
        String past = axis.backlash().inside() > 0
                ? ", past a place go back " + axis.backlash().text() + " and a little more"
                : "";
        return name + " " + axis.perTurn().text() + " a turn, " + divisions + " divisions of "
                + axis.division().text() + ", come from the " + (name.equals("X") ? "left" : "front") + past;
    }

    /** How to know that zero is still there. */
    String check() {
        return dials().isEmpty()
                ? "found twice, the same both times"
                : "found twice, the same both times; turns counted aloud: one turn off is " + off();
    }

    private String off() {
        Axis axis = machine.x().read() == Axis.ReadBy.DIAL ? machine.x() : machine.y();
        return axis.perTurn().text();
    }
}

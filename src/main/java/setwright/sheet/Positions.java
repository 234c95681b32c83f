package setwright.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnSetUp;
import setwright.location.Dial;
import setwright.plan.part.Heights;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;
import setwright.shop.Axis;
import setwright.shop.Machine;

/**
 * Places on the table in the form that this machine reads: readout axes as signed values from the datum, dial axes as
 * turns of the handle and what the dial then reads.
 */
final class Positions {
    private static final BigDecimal INCH = new BigDecimal("25.4");
    private static final int DIAL_INCH_PLACES = 4;
    private static final int DIAL_MM_PLACES = 3;

    private final Machine machine;
    private final Printing printing;
    private final DrawnSetUp setUp;
    private final Point2 datum;

    Positions(Shown shown, DrawnSetUp setUp, Heights heights) {
        machine = shown.plan().rows().machine();
        printing = shown.printing();
        this.setUp = setUp;
        datum = datum(setUp, heights);
    }

    private static Point2 datum(DrawnSetUp setUp, Heights heights) {
        return switch (setUp.datum()) {
            case EDGES -> new Point2(heights.left(), heights.front());
            case BETWEEN_EDGES ->
                new Point2((heights.left() + heights.right()) / 2, (heights.front() + heights.back()) / 2);
            case JAW_AND_STOP -> new Point2(heights.left(), heights.back());
            case BORE_SWEPT, SCRIBED_LINES, DEVICE_CENTRE ->
                new Point2((heights.left() + heights.right()) / 2, (heights.front() + heights.back()) / 2);
        };
    }

    /** From where places are counted. */
    String from() {
        return switch (setUp.datum()) {
            case EDGES -> "X from the left edge of the part, Y from its front edge; both edges found";
            case BETWEEN_EDGES -> "X and Y from the middle of the part, found between its edges";
            case BORE_SWEPT -> "X and Y from the bore, swept with the indicator";
            case SCRIBED_LINES -> "X and Y from the scribed lines";
            case DEVICE_CENTRE -> "X and Y from the middle of the device, swept with the indicator";
            case JAW_AND_STOP -> "X from the stop at the left end, Y from the solid jaw, minus to the machinist";
        };
    }

    /** How the two axes are read, as a sentence. */
    String reading() {
        boolean dial = machine.x().read() == Axis.ReadBy.DIAL || machine.y().read() == Axis.ReadBy.DIAL;
        return dial
                ? "Dials at nought at the datum; so many whole turns of the handle, then on the same way to what the"
                        + " dial reads. Come to every place from the left and from the front, backlash taken up."
                : "Readout: signed values from the datum.";
    }

    String x(Point2 spot) {
        return read(machine.x(), spot.x() - datum.x());
    }

    String y(Point2 spot) {
        return read(machine.y(), spot.y() - datum.y());
    }

    String both(Point2 spot) {
        return "X " + x(spot) + ", Y " + y(spot);
    }

    private String read(Axis axis, double mm) {
        return switch (axis.read()) {
            case READOUT -> signed(mm);
            case DIAL -> dial(axis, mm);
        };
    }

    private String signed(double mm) {
        String printed = printing.of(Measure.LENGTH, mm, printing.units() == UnitSystem.METRIC ? 2 : 4);
        return mm >= 0 ? "+" + printed : printed;
    }

    private static String dial(Axis axis, double mm) {
        boolean inch = inInches(axis);
        Dial dial = new Dial(
                in(inch, axis.perTurn().inside()), in(inch, axis.division().inside()));
        Dial.Move move = dial.move(in(inch, mm));
        String reading = move.reading()
                .setScale(inch ? DIAL_INCH_PLACES : DIAL_MM_PLACES, RoundingMode.HALF_EVEN)
                .toPlainString();
        return turns(move) + ", dial " + reading + (inch ? " in" : " mm");
    }

    /** Whole turns from dial nought, before the last part of one. */
    private static String turns(Dial.Move move) {
        if (move.turns() >= 0) {
            return counted(move.turns());
        }
        int whole = -move.turns() - (move.reading().signum() > 0 ? 1 : 0);
        return counted(whole) + " back";
    }

    private static String counted(int turns) {
        return turns == 1 ? "1 turn" : turns + " turns";
    }

    /** A screw that makes a whole number of ten-thousandths of an inch a turn and was typed so. */
    private static boolean inInches(Axis axis) {
        String text = axis.perTurn().text();
        return text.contains("in") || text.contains("\"");
    }

    private static BigDecimal in(boolean inch, double mm) {
        BigDecimal exact = Dial.exact(mm);
        return inch ? exact.divide(INCH, new MathContext(16)).stripTrailingZeros() : exact;
    }
}

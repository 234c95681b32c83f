package setwright.location.key;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** The seat of a key in a round shaft, from the crown and from the side of the seat; millimetres. */
public final class KeySeat {
    private static final Source CHORD = Source.of(
            "Engineering mathematics text, triangles exercise 16 (rise of the arc plus depth of the wall); chord of a circle");
    private static final Symbol SHAFT = symbol("D", "diameter of the shaft", Unit.MM, 20, 200);
    private static final Symbol WIDTH = symbol("W", "width of the key", Unit.MM, 2, 19);
    private static final Symbol RISE = symbol("Y", "rise of the arc", Unit.MM, 0, 5);
    private static final Symbol DEPTH = symbol("t", "depth of the seat from the crown", Unit.MM, 0.5, 19);

    public static final Formula RISE_OF_ARC =
            new Formula("Y = (D - √(D^2 - W^2)) / 2", RISE, List.of(SHAFT, WIDTH), v -> riseOfArc(v[0], v[1]), CHORD);

    /** From the crown, where the depth is taken at the side. */
    public static final Formula FROM_TOP = new Formula(
            "t = s + Y",
            DEPTH,
            List.of(symbol("s", "depth at the side", Unit.MM, 0.5, 19), RISE),
            v -> v[0] + v[1],
            CHORD);

    /** What a micrometer reads over seat and opposite side. */
    public static final Formula OVER_OPPOSITE = new Formula(
            "S = D - t",
            symbol("S", "over the opposite side", Unit.MM, 0, 200),
            List.of(SHAFT, DEPTH),
            v -> v[0] - v[1],
            Source.of("DIN 6885-1 (d - t1) and ASME B17.1 (S) gauge the seat so"));

    /** A square or flat key by ASME B17.1 sinks half its height below the edge of the seat. */
    public static final Formula HALF_HEIGHT = new Formula(
            "s = H / 2",
            symbol("s", "depth at the side", Unit.MM, 0.5, 20),
            List.of(symbol("H", "height of the key", Unit.MM, 1, 40)),
            v -> v[0] / 2,
            Source.of("ASME B17.1: S = D - Y - H / 2 (Machinery's Handbook Pocket Companion table 1)"));

    /** From the touch at the side of the shaft to its middle. */
    public static final Formula TO_CENTRE = new Formula(
            "x = (D + c) / 2 + p",
            symbol("x", "move to the middle", Unit.MM, 0, 500),
            List.of(
                    SHAFT,
                    symbol("c", "diameter of the cutter, or width of a disc", Unit.MM, 1, 50),
                    symbol("p", "paper between", Unit.MM, 0, 1)),
            v -> (v[0] + v[1]) / 2 + v[2],
            Source.of("computed: touch the side, then half of both; paper: common practice"));

    private KeySeat() {}

    /** @throws IllegalArgumentException where the key is as wide as the shaft */
    public static double riseOfArc(double shaft, double width) {
        if (!(width < shaft)) {
            throw new IllegalArgumentException(
                    "the key is as wide as the shaft; accepted: a width below its diameter.");
        }
        return (shaft - StrictMath.sqrt(shaft * shaft - width * width)) / 2;
    }

    /** In the hub by ASME B17.1 with its clearance of 0.005 in for a parallel key. */
    public static double hubAcross(double shaft, double width, double height) {
        return shaft - riseOfArc(shaft, width) + height / 2 + 0.127;
    }
}

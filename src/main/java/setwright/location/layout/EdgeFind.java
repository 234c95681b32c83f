package setwright.location.layout;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** Where a face is that a tip has touched. */
public final class EdgeFind {
    private static final Source HALF = Source.of(
            "half-diameter rule (clough42.com/2017/11/30/making-split-cylinder-edge-finding-tool); paper: common practice");
    private static final Symbol READING = symbol("r", "reading at the touch", Unit.MM, -500, 500);
    private static final Symbol TIP = symbol("d", "diameter of the tip", Unit.MM, 0, 50);
    private static final Symbol PAPER = symbol("p", "paper between", Unit.MM, 0, 1);
    private static final Symbol ZERO = symbol("x", "place of the face on the readout", Unit.MM, -600, 600);

    /** A face on the left or front of the part: the spindle stands on its lesser side. */
    public static final Formula LESSER =
            new Formula("x = r + d / 2 + p", ZERO, List.of(READING, TIP, PAPER), v -> v[0] + v[1] / 2 + v[2], HALF);

    /** A face on the right or back of the part. */
    public static final Formula GREATER =
            new Formula("x = r - d / 2 - p", ZERO, List.of(READING, TIP, PAPER), v -> v[0] - v[1] / 2 - v[2], HALF);

    /** The top: the tool stands higher by what lies between. */
    public static final Formula TOP = new Formula("x = r - p", ZERO, List.of(READING, PAPER), v -> v[0] - v[1], HALF);

    /** The middle between two faces; the tip cancels. */
    public static final Formula MIDDLE = new Formula(
            "x = (r + R) / 2",
            ZERO,
            List.of(READING, symbol("R", "reading on the other side", Unit.MM, -500, 500)),
            v -> (v[0] + v[1]) / 2,
            Source.of("computed: mean of two readings"));

    private EdgeFind() {}

    /** The sides of a part as the machinist stands before it. */
    public enum Side {
        LEFT,
        RIGHT,
        FRONT,
        BACK,
        TOP;

        /** Whether the spindle stands on the lesser side of the face as it touches it. */
        public boolean lesser() {
            return this == LEFT || this == FRONT;
        }
    }

    /** The width between two faces, read from touch to touch. */
    public static double width(double one, double other, double tip, boolean outside) {
        return Math.abs(other - one) + (outside ? -tip : tip);
    }
}

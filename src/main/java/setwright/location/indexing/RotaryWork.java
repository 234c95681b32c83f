package setwright.location.indexing;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** Milling round on a rotary table, its middle under the middle of the arc. */
public final class RotaryWork {
    /** The handle that gives a feed at a radius. */
    public static final Formula HANDLE = new Formula(
            "n = 1000 v R / (2 π r)",
            symbol("n", "turns of the handle", Unit.RPM, 0, 1000),
            List.of(
                    symbol("v", "feed", Unit.M_PER_MIN, 0.01, 1),
                    symbol("R", "worm ratio", Unit.NONE, 36, 180),
                    symbol("r", "radius that is cut", Unit.MM, 5, 300)),
            v -> turning(v[0], v[2]) * v[1],
            Source.of("computed: feed over radius, times the worm ratio"));

    private static final Source OFFSET = Source.of("computed: radius of the arc and of the cutter");
    private static final Symbol FROM_MIDDLE = symbol("o", "middle of the table to the spindle", Unit.MM, 0, 1000);
    private static final Symbol RADIUS = symbol("r", "radius of the arc", Unit.MM, 51, 500);
    private static final Symbol CUTTER = symbol("d", "diameter of the cutter", Unit.MM, 1, 100);

    public static final Formula OUTSIDE =
            new Formula("o = r + d / 2", FROM_MIDDLE, List.of(RADIUS, CUTTER), v -> v[0] + v[1] / 2, OFFSET);
    public static final Formula INSIDE =
            new Formula("o = r - d / 2", FROM_MIDDLE, List.of(RADIUS, CUTTER), v -> v[0] - v[1] / 2, OFFSET);

    /** Which side of the cutter makes the arc. */
    public enum Cut {
        OUTSIDE,
        INSIDE,
        SLOT
    }

    private RotaryWork() {}

    /** From the middle of the table to the spindle, for an arc of radius r cut by a cutter of diameter d. */
    public static double offset(double radius, double cutter, Cut cut) {
        if (cut == Cut.INSIDE && cutter > 2 * radius) {
            throw new IllegalArgumentException("A cutter of " + cutter + " mm does not fit into a radius of " + radius
                    + " mm; it may be " + 2 * radius + " mm at most.");
        }
        double[] both = {radius, cutter};
        return switch (cut) {
            case OUTSIDE -> OUTSIDE.kernel().applyAsDouble(both);
            case INSIDE -> INSIDE.kernel().applyAsDouble(both);
            case SLOT -> radius;
        };
    }

    /** Rad/s of the table for a feed in mm/s at a radius. */
    public static double turning(double feed, double radius) {
        return feed / radius;
    }
}

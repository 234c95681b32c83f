package setwright.location.indexing;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
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
        return switch (cut) {
            case OUTSIDE -> radius + cutter / 2;
            case INSIDE -> radius - cutter / 2;
            case SLOT -> radius;
        };
    }

    /** Rad/s of the table for a feed in mm/s at a radius. */
    public static double turning(double feed, double radius) {
        return feed / radius;
    }
}

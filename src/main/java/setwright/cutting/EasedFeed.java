package setwright.cutting;

import java.util.Optional;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/**
 * A stretch of a hole that is fed more gently.
 *
 * @param from depth of the point where it begins, mm
 * @param to where it ends, mm
 * @param feedPerTurn mm
 */
public record EasedFeed(double from, double to, double feedPerTurn) {
    /** Of the planned feed. */
    public static final double SHARE = 0.5;

    public static final Table RULE = new Table(
            "eased feed",
            "half the feed until the point is in on a rough or slanted face, and from where it breaks through",
            Unit.MM_PER_REV,
            Source.of("common practice"));

    /** Until the whole point is in. */
    public static EasedFeed entering(double point, double feedPerTurn) {
        return new EasedFeed(0, point, SHARE * feedPerTurn);
    }

    /** From where the tip meets the far face; empty where it does not go through. */
    public static Optional<EasedFeed> breakingThrough(double thickness, double whole, double feedPerTurn) {
        return whole > thickness ? Optional.of(new EasedFeed(thickness, whole, SHARE * feedPerTurn)) : Optional.empty();
    }

    /** What it costs beside the planned feed, mm of travel at that feed. */
    public double longerBy() {
        return (to - from) * (1 / SHARE - 1);
    }
}

package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * How thick the chip of a milling cut is. Side cuts start or end at a wall; a centred face cut takes the middle of the
 * cutter. All lengths in mm, angles in rad; a lead angle of 0 is a square shoulder.
 */
public final class ChipThickness {
    private static final Source CIRCLE = Source.of("computed: geometry of a circular tooth path, h = fz cos λ sin φ");
    private static final Symbol FEED = symbol("fz", "feed per tooth", Unit.MM_PER_TOOTH, 0.001, 2);
    private static final Symbol WIDTH = symbol("ae", "width of cut", Unit.MM, 0.05, 200);
    private static final Symbol DIAMETER = symbol("D", "diameter", Unit.MM, 1, 200);
    private static final Symbol LEAD = symbol("λ", "lead angle", Unit.DEG, 0, 80);
    private static final Symbol MEAN_CHIP = symbol("hm", "mean chip thickness", Unit.MM, 0.0005, 2);

    /** In a side cut; from half the diameter on it is fz cos λ. */
    public static final Formula LARGEST = new Formula(
            "h = 2 fz cos(λ) √(min(ae / D, 0.5) (1 - min(ae / D, 0.5)))",
            symbol("h", "largest chip thickness", Unit.MM, 0.001, 2),
            List.of(FEED, WIDTH, DIAMETER, LEAD),
            a -> largest(a[0] * StrictMath.cos(a[3]), a[1], a[2]),
            CIRCLE);

    /** In a side cut, over the engaged arc. */
    public static final Formula MEAN = new Formula(
            "hm = 2 fz cos(λ) min(ae / D, 1) / arccos(1 - 2 min(ae / D, 1))",
            MEAN_CHIP,
            List.of(FEED, WIDTH, DIAMETER, LEAD),
            a -> mean(a[0] * StrictMath.cos(a[3]), a[1], a[2]),
            Source.of(
                    "computed: exact mean over the engaged arc; the same form stands in a general catalogue 2018 p.551"
                            + " and a milling catalogue p.289"));

    /** In a centred face cut; not for side cuts, where it is up to half too high. */
    public static final Formula MEAN_CENTRED = new Formula(
            "hm = fz cos(λ) min(ae / D, 1) / arcsin(min(ae / D, 1))",
            MEAN_CHIP,
            List.of(FEED, WIDTH, DIAMETER, LEAD),
            a -> meanCentred(a[0] * StrictMath.cos(a[3]), a[1], a[2]),
            Source.of("tool-maker formula page: hm = 180 sin κ ae fz / (π D arcsin(ae / D)) for a centred face cut"));

    /** The feed per tooth at which the largest chip of a side cut is as thick as the feed that is wanted of it. */
    public static final Formula FEED_FOR_FULL_CHIP = new Formula(
            "fz = h / (2 cos(λ) √(min(ae / D, 0.5) (1 - min(ae / D, 0.5))))",
            symbol("fz", "feed for a full chip", Unit.MM_PER_TOOTH, 0.001, 10),
            List.of(symbol("h", "largest chip that is wanted", Unit.MM, 0.001, 2), WIDTH, DIAMETER, LEAD),
            a -> feedForFullChip(a[0] / StrictMath.cos(a[3]), a[1], a[2]),
            CIRCLE);

    private ChipThickness() {}

    /** The largest chip of a side cut; the feed is that along the lead, fz cos λ. */
    public static double largest(double feedPerTooth, double width, double diameter) {
        return feedPerTooth * thinning(width, diameter);
    }

    /** The mean chip of a side cut; the feed is that along the lead, fz cos λ. */
    public static double mean(double feedPerTooth, double width, double diameter) {
        return meanOverArc(feedPerTooth, 0, Engagement.arc(width, diameter));
    }

    /** The mean chip of a centred face cut; the feed is that along the lead, fz cos λ. */
    public static double meanCentred(double feedPerTooth, double width, double diameter) {
        double half = StrictMath.asin(Math.min(width / diameter, 1));
        return meanOverArc(feedPerTooth, Math.PI / 2 - half, Math.PI / 2 + half);
    }

    /** The mean of h sin φ between two angles. */
    public static double meanOverArc(double feedPerTooth, double start, double exit) {
        return feedPerTooth * (StrictMath.cos(start) - StrictMath.cos(exit)) / (exit - start);
    }

    /** The feed at which the largest chip is as thick as wanted; with a lead angle hand in the chip over cos λ. */
    public static double feedForFullChip(double chip, double width, double diameter) {
        return chip / thinning(width, diameter);
    }

    /** Largest chip over feed per tooth: 2 √(a/D (1 - a/D)) below half the diameter, then 1. */
    private static double thinning(double width, double diameter) {
        double share = Math.min(width / diameter, 0.5);
        return 2 * Math.sqrt(share * (1 - share));
    }
}

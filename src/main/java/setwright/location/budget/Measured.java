package setwright.location.budget;

import java.util.ArrayList;
import java.util.List;
import setwright.location.Contributor;
import setwright.quantity.Source;

/**
 * A size that is measured before the last cut and corrected by it: gauge and last cut are what is left; half-widths in
 * millimetres.
 */
public enum Measured {
    BORE("bore gauge set by micrometer", 0.004),
    OUTSIDE("micrometer", 0.004),
    WIDTH("gauge blocks or inside micrometer", 0.005),
    DEPTH("depth micrometer", 0.008);

    public static final String LAST_CUT = "setting of the last cut";

    /** Half a division of a boring head of 0.01 mm on the diameter, taken by eye. */
    public static final double HEAD_SETTING = 0.004;

    /** How alike two light last cuts come out. */
    private static final double REPEATS = 0.002;

    private static final Source COMMON = Source.of("common practice");

    private final String gauge;
    private final double halfWidth;

    Measured(String gauge, double halfWidth) {
        this.gauge = gauge;
        this.halfWidth = halfWidth;
    }

    /** A bore that is cut to the dial of its head and not measured before the last cut. */
    public static List<Contributor> bySightOfTheDial() {
        List<Contributor> all = new ArrayList<>(AxisErrors.boringHead().contributors());
        all.add(Contributor.oneDirection("setting the bar to size at the start", 0.02, COMMON)
                .halvedBy("measuring the bore before the last cut"));
        all.add(Contributor.oneDirection("spring of the bar", 0.01, COMMON).halvedBy("a pass without infeed"));
        return List.copyOf(all);
    }

    /** @param setting how close the last cut can be set */
    public List<Contributor> contributors(double setting) {
        return List.of(
                Contributor.oneDirection(gauge, halfWidth, COMMON).halvedBy("a comparator set by gauge blocks"),
                Contributor.oneDirection(LAST_CUT, setting, COMMON).halvedBy("an indicator on the slide"),
                Contributor.oneDirection("spring of the last cut, from one to the next", REPEATS, COMMON)
                        .halvedBy("a pass without infeed"));
    }
}

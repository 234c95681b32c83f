package setwright.cutting;

/** A drill that is fed by a hand on the quill's lever. */
public final class LeverPush {
    /** What a hand on the lever pushes the quill with, N (from memory: about 3,000). */
    public static final double BY_HAND = 3000;

    /** Below this share of the planned feed a drill rubs more than it cuts (common practice). */
    public static final double SLOWEST = 0.5;

    private LeverPush() {}

    /**
     * Thrust of a plain sharp drill at its slowest sensible feed, N; nought where the hole that is there is as wide.
     *
     * @param diameter of the drill, mm
     * @param feed planned, mm a turn
     * @param before diameter of the hole that is there, mm; nought in the full
     * @param workFactor work-material factor of {@link Drilling#THRUST}
     */
    public static double slowest(double diameter, double feed, double before, double workFactor) {
        return planned(diameter, SLOWEST * feed, before, workFactor);
    }

    /** The same at the planned feed, N. */
    public static double planned(double diameter, double feed, double before, double workFactor) {
        return before < diameter
                ? Drilling.load(DrillCut.plain(diameter, feed).withPilot(before), workFactor)
                        .thrust()
                : 0;
    }
}

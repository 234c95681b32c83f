package setwright.quantity.thread;

/** The shape of a thread, as far as its sizes follow from it. */
public enum ThreadProfile {
    /** ISO 68-1 and ASME B1.1. */
    SIXTY_DEGREES(0.649519, 1.082532),
    /** BS 84: Whitworth, fine and pipe. */
    WHITWORTH(0.640327, 1.280654),
    /** BS 93, 47.5 degrees. */
    BRITISH_ASSOCIATION(0.6, 1.2),
    /** ASME B1.20.1, at the small end; the taper is 1 in 16 on the diameter. */
    TAPER_PIPE(1.1, 1.9);

    private final double pitchDepth;
    private final double minorDepth;

    ThreadProfile(double pitchDepth, double minorDepth) {
        this.pitchDepth = pitchDepth;
        this.minorDepth = minorDepth;
    }

    public double pitchDiameter(double major, double pitch) {
        return major - (pitchDepth + lead(major)) * pitch;
    }

    /** Basic minor diameter of the nut thread. */
    public double minor(double major, double pitch) {
        return major - (minorDepth + lead(major)) * pitch;
    }

    /** A taper pipe thread is longer, and so thinner at its end, the larger the pipe. */
    private double lead(double major) {
        return this == TAPER_PIPE ? 0.05 * major / 25.4 : 0;
    }

    /** Whether a stress area is defined for its bolts. */
    public boolean hasStressArea() {
        return this == SIXTY_DEGREES;
    }

    /**
     * What counts as a full thread in the trade, taken off the diameter for each pitch: twice the depth of the bolt's
     * thread.
     */
    public double fullThread() {
        return this == SIXTY_DEGREES ? 1.299038 : 2 * (minorDepth - pitchDepth);
    }
}

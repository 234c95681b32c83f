package setwright.geometry;

/** The heights from a lower to an upper one, in mm. Heights that differ by less than {@link #SAME} are one. */
public record Heights(double low, double high) {
    static final double SAME = 1e-9;

    public Heights {
        if (!(low <= high) || !Double.isFinite(high - low)) {
            throw new IllegalArgumentException(
                    "Heights run from a lower to an upper one, not from " + low + " to " + high + ".");
        }
    }

    public double middle() {
        return (low + high) / 2;
    }

    public double length() {
        return high - low;
    }

    private boolean isOne() {
        return length() <= SAME;
    }

    /** True where both have heights in common; that one ends where the other starts does not count. */
    public boolean share(Heights other) {
        if (isOne() || other.isOne()) {
            return low <= other.high + SAME && high >= other.low - SAME;
        }
        return low <= other.high - SAME && high >= other.low + SAME;
    }

    /** True where all heights of the other are among these. */
    public boolean hold(Heights other) {
        return low <= other.low + SAME && high >= other.high - SAME;
    }
}

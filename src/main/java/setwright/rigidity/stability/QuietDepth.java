package setwright.rigidity.stability;

/** Up to which depth a cut is quiet at one speed, at every width, by the delayed map. */
public record QuietDepth(ToothCut cut, Mode x, Mode y) {
    private static final double PACE = 1.15;
    private static final double FINE = 1e-3;

    /**
     * The first depth at which ringing grows, mm; quiet islands beyond it are left out.
     *
     * @param speed of the spindle, rad/s
     * @param deepest nothing beyond is looked at; the answer where all is quiet
     */
    public double at(double speed, double deepest) {
        double quiet = 0;
        double depth = Math.min(deepest, ZeroOrder.of(cut, x, y).smallestDepth() / 2);
        while (!rings(speed, depth)) {
            if (depth >= deepest) {
                return deepest;
            }
            quiet = depth;
            depth = Math.min(deepest, depth * PACE);
        }
        return between(speed, quiet, depth);
    }

    private double between(double speed, double quiet, double ringing) {
        double low = quiet;
        double high = ringing;
        while (high - low > FINE * high) {
            double middle = (low + high) / 2;
            if (rings(speed, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }

    public boolean rings(double speed, double depth) {
        return new DelayedMap(cut, x, y, speed, depth).growth() > 1;
    }
}

package setwright.caution;

import setwright.quantity.Unit;

/**
 * The figure that a check found, and what it is compared with.
 *
 * @param value found, in the unit that the program computes in
 * @param limit what it is compared with, in the same unit
 * @param unit in which both are printed
 * @param worseUp whether a larger value is worse
 */
public record Figure(double value, double limit, Unit unit, boolean worseUp) {
    /** Clearly worse: gone on by more than this share of the way from the limit to where it was. */
    private static final double CLEARLY = 0.1;

    /** Below this an increase is never clear, whatever the share. */
    private static final double NOISE = 1e-3;

    /** Less of it is worse: a clearance, a factor. */
    public static Figure atLeast(double limit, double value, Unit unit) {
        return new Figure(value, limit, unit, false);
    }

    /** More of it is worse: a stroke used, a lean. */
    public static Figure atMost(double limit, double value, Unit unit) {
        return new Figure(value, limit, unit, true);
    }

    /** Whether it keeps to its limit. */
    public boolean holds() {
        return worseUp ? value <= limit : value >= limit;
    }

    /** The share that is left: towards 1 with much of it, nought at the limit, negative beyond it. */
    public double left() {
        if (limit <= 0) {
            return holds() ? 1 : -1;
        }
        if (worseUp) {
            return 1 - value / limit;
        }
        return holds() ? 1 - limit / value : value / limit - 1;
    }

    /** Whether it is clearly worse than it was when it stood at {@code then}; where it was clear, touching always is. */
    public boolean clearlyWorseThan(double then) {
        double slack = Math.max(CLEARLY * Math.abs(then - limit), NOISE);
        boolean nowTouches = !worseUp && then > 0 && value <= 0;
        return nowTouches || (worseUp ? value > then + slack : value < then - slack);
    }
}

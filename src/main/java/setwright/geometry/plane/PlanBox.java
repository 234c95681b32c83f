package setwright.geometry.plane;

/** The upright rectangle that just holds something in plan, in millimetres; {@link #EMPTY} holds nothing. */
public record PlanBox(double xLow, double yLow, double xHigh, double yHigh) {
    public static final PlanBox EMPTY = new PlanBox(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    public static PlanBox of(Point2 a, Point2 b) {
        return new PlanBox(
                Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    public boolean isEmpty() {
        return xLow > xHigh || yLow > yHigh;
    }

    public PlanBox and(PlanBox other) {
        return new PlanBox(
                Math.min(xLow, other.xLow),
                Math.min(yLow, other.yLow),
                Math.max(xHigh, other.xHigh),
                Math.max(yHigh, other.yHigh));
    }

    public PlanBox and(Point2 p) {
        return and(of(p, p));
    }

    /** The box grown by {@code by} on all four sides. */
    public PlanBox grown(double by) {
        return new PlanBox(xLow - by, yLow - by, xHigh + by, yHigh + by);
    }

    /** The least distance of the two rectangles, nought where they meet. Never more than that of what they hold. */
    public double gap(PlanBox other) {
        double dx = Math.max(0, Math.max(xLow - other.xHigh, other.xLow - xHigh));
        double dy = Math.max(0, Math.max(yLow - other.yHigh, other.yLow - yHigh));
        return dx == 0 ? dy : dy == 0 ? dx : Math.sqrt(dx * dx + dy * dy);
    }

    /** True where the other lies within, edges in common counted in. */
    public boolean holds(PlanBox other) {
        return xLow <= other.xLow && yLow <= other.yLow && xHigh >= other.xHigh && yHigh >= other.yHigh;
    }

    public double length() {
        return xHigh - xLow;
    }

    public double depth() {
        return yHigh - yLow;
    }

    public Point2 middle() {
        return new Point2((xLow + xHigh) / 2, (yLow + yHigh) / 2);
    }
}

package setwright.geometry;

import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/** The upright box that just holds something, in millimetres. */
public record Box(PlanBox plan, double zLow, double zHigh) {
    public static final Box EMPTY = new Box(PlanBox.EMPTY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

    public static Box of(Point3 a, Point3 b) {
        return new Box(PlanBox.of(a.plan(), b.plan()), Math.min(a.z(), b.z()), Math.max(a.z(), b.z()));
    }

    public boolean isEmpty() {
        return plan.isEmpty() || zLow > zHigh;
    }

    public Box and(Box other) {
        return new Box(plan.and(other.plan), Math.min(zLow, other.zLow), Math.max(zHigh, other.zHigh));
    }

    /** The corner with the least x, y and z. */
    public Point3 low() {
        return new Point3(plan.xLow(), plan.yLow(), zLow);
    }

    /** The corner with the greatest x, y and z. */
    public Point3 high() {
        return new Point3(plan.xHigh(), plan.yHigh(), zHigh);
    }

    /** Length, depth and height. */
    public Point3 size() {
        return high().minus(low());
    }

    /** The box as a body that can be met. */
    public Prism solid() {
        return Prism.box(new Point2(plan.xLow(), plan.yLow()), new Point2(plan.xHigh(), plan.yHigh()), zLow, zHigh);
    }
}

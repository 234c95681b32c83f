package setwright.geometry;

import setwright.geometry.plane.Point2;

/** A place in millimetres, or the step from one place to another; z is up unless the part frame is meant. */
public record Point3(double x, double y, double z) {
    public static final Point3 ORIGIN = new Point3(0, 0, 0);

    public Point3 {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
            throw new IllegalArgumentException(
                    "A place needs three finite numbers, not " + x + ", " + y + ", " + z + ".");
        }
    }

    public static Point3 of(Point2 plan, double z) {
        return new Point3(plan.x(), plan.y(), z);
    }

    public Point2 plan() {
        return new Point2(x, y);
    }

    public Point3 plus(Point3 step) {
        return new Point3(x + step.x, y + step.y, z + step.z);
    }

    public Point3 minus(Point3 other) {
        return new Point3(x - other.x, y - other.y, z - other.z);
    }

    public Point3 times(double factor) {
        return new Point3(x * factor, y * factor, z * factor);
    }

    public double dot(Point3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    public double distance(Point3 other) {
        return minus(other).length();
    }
}

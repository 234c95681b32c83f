package setwright.geometry.plane;

/** A place in plan in millimetres, or the step from one place to another. */
public record Point2(double x, double y) {
    public static final Point2 ORIGIN = new Point2(0, 0);

    public Point2 {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("A place in plan needs two finite numbers, not " + x + ", " + y + ".");
        }
    }

    public Point2 plus(Point2 step) {
        return new Point2(x + step.x, y + step.y);
    }

    public Point2 minus(Point2 other) {
        return new Point2(x - other.x, y - other.y);
    }

    public Point2 times(double factor) {
        return new Point2(x * factor, y * factor);
    }

    public double dot(Point2 other) {
        return x * other.x + y * other.y;
    }

    /** Positive where {@code other} lies anticlockwise of this. */
    public double cross(Point2 other) {
        return x * other.y - y * other.x;
    }

    public double length() {
        return Math.sqrt(x * x + y * y);
    }

    public double distance(Point2 other) {
        double dx = x - other.x;
        double dy = y - other.y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** The same place; unlike {@code equals} it does not tell 0 from -0. */
    public boolean at(Point2 other) {
        return x == other.x && y == other.y;
    }
}

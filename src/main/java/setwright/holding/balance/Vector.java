package setwright.holding.balance;

import setwright.geometry.Point3;

/** A place (mm), direction, force (N) or moment (N·mm) in the frame of the set-up: x right, y away, z up. */
public record Vector(double x, double y, double z) {
    public static final Vector ZERO = new Vector(0, 0, 0);
    public static final Vector RIGHT = new Vector(1, 0, 0);
    public static final Vector AWAY = new Vector(0, 1, 0);
    public static final Vector UP = new Vector(0, 0, 1);

    public Vector {
        if (!Double.isFinite(x + y + z)) {
            throw new IllegalArgumentException(
                    "A vector has three finite numbers, not " + x + ", " + y + ", " + z + ".");
        }
    }

    /** A place on the table. */
    public static Vector of(Point3 place) {
        return new Vector(place.x(), place.y(), place.z());
    }

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y, z + other.z);
    }

    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y, z - other.z);
    }

    public Vector times(double factor) {
        return new Vector(factor * x, factor * y, factor * z);
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    /** The same direction, one long. */
    public Vector unit() {
        double length = length();
        if (!(length > 0)) {
            throw new IllegalArgumentException("A vector of no length has no direction.");
        }
        return times(1 / length);
    }
}

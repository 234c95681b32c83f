package setwright.geometry;

/** One of the six directions along the axes. */
public enum Heading {
    PLUS_X(1, 0, 0),
    MINUS_X(-1, 0, 0),
    PLUS_Y(0, 1, 0),
    MINUS_Y(0, -1, 0),
    PLUS_Z(0, 0, 1),
    MINUS_Z(0, 0, -1);

    private final int x;
    private final int y;
    private final int z;

    Heading(int x, int y, int z) {
        this.x = x;
        this.y = y;
        this.z = z;
    }

    public int x() {
        return x;
    }

    public int y() {
        return y;
    }

    public int z() {
        return z;
    }

    public Heading opposite() {
        return along(-x, -y, -z);
    }

    /** 1 where both are the same, -1 where they are opposite, else 0. */
    int dot(Heading other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** The heading with these components. */
    static Heading along(int x, int y, int z) {
        for (Heading heading : values()) {
            if (heading.x == x && heading.y == y && heading.z == z) {
                return heading;
            }
        }
        throw new IllegalArgumentException(x + ", " + y + ", " + z + " is no direction along an axis.");
    }

    /** How far a step goes this way. */
    public double of(Point3 step) {
        return x * step.x() + y * step.y() + z * step.z();
    }

    /** The step of a length this way. */
    public Point3 step(double length) {
        return new Point3(x * length, y * length, z * length);
    }
}

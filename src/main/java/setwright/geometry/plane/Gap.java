package setwright.geometry.plane;

/**
 * How far a path is from something in plan, and where.
 *
 * @param distance in mm; negative by the depth where the path runs inside a region
 * @param on the place on the path
 * @param off the place on the other thing
 */
public record Gap(double distance, Point2 on, Point2 off) {
    /** Nearer than this in mm counts as meeting. */
    public static final double MEETS = 1e-9;

    /** The exact distance of two edges. */
    public static Gap between(Edge path, Edge other) {
        Nearer nearer = new Nearer(path, other);
        nearer.search();
        return nearer.gap();
    }

    public boolean meets() {
        return distance <= MEETS;
    }

    /** The same gap counted as a depth. */
    Gap inside() {
        return new Gap(-distance, on, off);
    }

    Gap nearer(Gap other) {
        return other.distance < distance ? other : this;
    }
}

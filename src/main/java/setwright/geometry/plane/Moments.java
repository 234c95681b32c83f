package setwright.geometry.plane;

/**
 * An area in mm² with its first moments in mm³ about the origin.
 *
 * @param x ∫ x dA
 * @param y ∫ y dA
 */
public record Moments(double area, double x, double y) {
    public static final Moments NONE = new Moments(0, 0, 0);

    public Moments plus(Moments other) {
        return new Moments(area + other.area, x + other.x, y + other.y);
    }

    public Moments times(double factor) {
        return new Moments(area * factor, x * factor, y * factor);
    }

    /** The centroid; there is none where the area is nought. */
    public Point2 centroid() {
        return new Point2(x / area, y / area);
    }
}

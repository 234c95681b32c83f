package setwright.paint;

/**
 * How one looks at a drawing that was made to fit.
 *
 * @param scale how much larger, about the upper left corner of the area
 * @param dx to the right, px
 * @param dy down, px
 */
public record Eye(double scale, double dx, double dy) {
    /** As it fits. */
    public static final Eye FIT = new Eye(1, 0, 0);

    public Eye {
        if (!(scale > 0) || !Double.isFinite(scale + dx + dy)) {
            throw new IllegalArgumentException("A drawing is shown at a scale above nought, not " + scale + ".");
        }
    }

    /** Larger or smaller by a factor, the place under (x, y) staying where it is; px from the area's corner. */
    public Eye zoomed(double factor, double x, double y) {
        return new Eye(scale * factor, x - factor * (x - dx), y - factor * (y - dy));
    }

    public Eye moved(double x, double y) {
        return new Eye(scale, dx + x, dy + y);
    }
}

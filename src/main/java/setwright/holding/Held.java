package setwright.holding;

/**
 * A part as a vise has it: its origin is at its left front bottom corner, the jaws bear on front and back.
 *
 * @param length along the jaws, mm
 * @param depth from jaw to jaw, mm
 * @param gripHeight from the bottom of the part up to the top of the jaws, mm
 * @param offset how far its middle sits to the right of the middle of the jaws, mm
 */
public record Held(double length, double depth, double gripHeight, double offset) {
    public Held {
        if (!(length > 0 && depth > 0 && gripHeight > 0)) {
            throw new IllegalArgumentException("A held part has length, depth and grip height above 0 mm, not " + length
                    + ", " + depth + " and " + gripHeight + " mm.");
        }
    }

    /** In the middle of the jaws. */
    public static Held central(double length, double depth, double gripHeight) {
        return new Held(length, depth, gripHeight, 0);
    }

    /** Left end of what the jaws touch, mm from the left end of the part. */
    double left(Jaws jaws) {
        return Math.max(0, middle() - jaws.width() / 2);
    }

    /** Right end of what the jaws touch. */
    double right(Jaws jaws) {
        return Math.min(length, middle() + jaws.width() / 2);
    }

    /** Where the middle of the jaws is. */
    private double middle() {
        return length / 2 - offset;
    }
}

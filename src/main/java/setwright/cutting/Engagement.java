package setwright.cutting;

/**
 * The arc over which a tooth cuts. Angles run in the sense of rotation from the side of the cutter (+y) that lies to
 * the left of its feed (+x) when a right-hand cutter is seen from the spindle: a conventional cut starts at 0, a climb
 * cut ends at π.
 *
 * @param start angle at which a tooth enters, rad
 * @param exit angle at which it leaves, rad
 */
public record Engagement(double start, double exit) {
    private static final double ROUNDING = 1e-9;

    public Engagement {
        if (!(start >= 0 && start < exit && exit <= Math.PI)) {
            throw new IllegalArgumentException(
                    "A tooth cuts from an angle to a larger one between 0 and 180 degrees, not" + " from "
                            + StrictMath.toDegrees(start) + " to " + StrictMath.toDegrees(exit) + ".");
        }
    }

    /** The arc of a cut that leaves a wall (climb, conventional) or two (slot, as wide as the cutter). */
    public static Engagement of(Direction direction, double width, double diameter) {
        requireWithin(width, diameter);
        return switch (direction) {
            case CONVENTIONAL -> new Engagement(0, arc(width, diameter));
            case CLIMB -> new Engagement(Math.PI - arc(width, diameter), Math.PI);
            case SLOT -> slot(width, diameter);
        };
    }

    /**
     * The arc of a facing cut.
     *
     * @param width of the face that is cut
     * @param offset of the cutter's axis from the middle of the face, towards the side where its teeth enter: a
     *     positive one makes the chip start thicker, as in a climb cut
     * @param diameter of the cutter; what of the face lies beyond it is not cut
     */
    public static Engagement facing(double width, double offset, double diameter) {
        double left = Math.min(1, (width - 2 * offset) / diameter);
        double right = Math.max(-1, -(width + 2 * offset) / diameter);
        if (!(width > 0) || left <= right) {
            throw new IllegalArgumentException("A cutter of " + diameter + " mm, " + offset
                    + " mm off the middle of a face " + width + " mm wide, cuts nothing of it.");
        }
        return new Engagement(StrictMath.acos(left), StrictMath.acos(right));
    }

    /** The arc of a disc that is fed straight at a face until it is so deep in it. */
    public static Engagement plunging(double depth, double diameter) {
        requireWithin(2 * depth, diameter);
        double half = StrictMath.acos(1 - 2 * depth / diameter);
        return new Engagement(Math.max(0, Math.PI / 2 - half), Math.min(Math.PI, Math.PI / 2 + half));
    }

    private static Engagement slot(double width, double diameter) {
        if (width < diameter * (1 - ROUNDING)) {
            throw new IllegalArgumentException("A slot is as wide as the cutter, " + diameter + " mm; at " + width
                    + " mm the cut is climb or conventional.");
        }
        return new Engagement(0, Math.PI);
    }

    private static void requireWithin(double width, double diameter) {
        if (!(width > 0 && width <= diameter * (1 + ROUNDING))) {
            throw new IllegalArgumentException("A cutter of " + diameter + " mm takes a width above 0 and up to "
                    + diameter + " mm, not " + width + " mm.");
        }
    }

    /** The arc of a cut that starts or ends at a wall: arccos(1 - 2 a / D), rad. */
    public static double arc(double width, double diameter) {
        return StrictMath.acos(1 - 2 * Math.min(width / diameter, 1));
    }

    public double arc() {
        return exit - start;
    }

    /** The width that a cutter of this diameter takes over this arc, mm. */
    public double width(double diameter) {
        return diameter / 2 * (StrictMath.cos(start) - StrictMath.cos(exit));
    }
}

package setwright.cutting;

/**
 * The teeth of a milling cutter as the cut sees them.
 *
 * @param diameter D over the cutting edges, mm
 * @param teeth z
 * @param helix angle of the edges to the axis, rad; positive for a right-hand helix on a right-hand cutter, which
 *     pulls the cutter out of its holder and lifts the work
 * @param leadAngle between edge and axis in the plane through the axis, rad; 0 for a square shoulder, negative where
 *     the edge leans inward as it rises
 */
public record MillingCutter(double diameter, int teeth, double helix, double leadAngle) {
    private static final double STEEPEST = StrictMath.toRadians(89);

    public MillingCutter {
        if (!(diameter > 0) || Double.isInfinite(diameter) || teeth < 1) {
            throw new IllegalArgumentException("A milling cutter has a diameter above 0 mm and at least 1 tooth, not "
                    + diameter + " mm and " + teeth + " teeth.");
        }
        if (!(Math.abs(helix) <= STEEPEST) || !(Math.abs(leadAngle) <= STEEPEST)) {
            throw new IllegalArgumentException("A helix and a lead angle lie within 89 degrees of the axis, not "
                    + StrictMath.toDegrees(helix) + " and " + StrictMath.toDegrees(leadAngle) + ".");
        }
    }

    /** A cutter with a square shoulder. */
    public static MillingCutter square(double diameter, int teeth, double helix) {
        return new MillingCutter(diameter, teeth, helix, 0);
    }

    public double radius() {
        return diameter / 2;
    }

    /** The angle from tooth to tooth, rad. */
    public double pitch() {
        return 2 * Math.PI / teeth;
    }

    /** How far an edge at a height above the tip lags behind the tip: 2 z tan β / D, rad. */
    public double lag(double height) {
        return 2 * height * StrictMath.tan(helix) / diameter;
    }
}

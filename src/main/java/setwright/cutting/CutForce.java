package setwright.cutting;

/**
 * What the work does to a right-hand cutter at one moment, or in the mean. The work feels the opposite.
 *
 * @param feed along the cutter's feed through the work (+x), N; the table is pulled along where it is positive
 * @param cross along +y, to the left of the feed as seen from the spindle, N
 * @param axial along the axis, away from the spindle, N; positive pulls the cutter out and lifts the work
 * @param torque about the axis, against the rotation, N·mm
 */
public record CutForce(double feed, double cross, double axial, double torque) {
    /** The part in the plane of the table, which bends the cutter, N. */
    public double resultant() {
        return StrictMath.hypot(feed, cross);
    }
}

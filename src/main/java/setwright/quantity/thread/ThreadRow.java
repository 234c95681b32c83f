package setwright.quantity.thread;

import setwright.quantity.Source;

/**
 * A row of the thread table: the thread, the drill customary before its tap, and the limits of the minor diameter of the
 * nut thread (class 6H or 2B); millimetres.
 *
 * @param tapDrill as stamped, for instance {@code 6.8}, {@code #7}, {@code 27/64}
 * @param stressArea as printed, mm²
 * @param clearance holes that its screw passes; NaN where the table has none
 */
public record ThreadRow(
        ScrewThread thread,
        String tapDrill,
        double tapDrillDiameter,
        double minorLeast,
        double minorGreatest,
        double stressArea,
        Clearance clearance,
        Source source) {

    /** Holes for the screw to pass, mm: ISO 273 fine, medium, coarse; ASME B18.2.8 close, normal, loose. */
    public record Clearance(double fine, double medium, double coarse) {}

    /** Whether a drilled hole comes out within the limits of the minor diameter. */
    public boolean takes(double drillDiameter) {
        return minorLeast <= drillDiameter && drillDiameter <= minorGreatest;
    }
}

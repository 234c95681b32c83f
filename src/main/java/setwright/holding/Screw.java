package setwright.holding;

/**
 * A screw that presses, lengths in mm.
 *
 * @param meanDiameter where the flanks bear on average
 * @param lead advance for each turn
 * @param friction of the flanks
 * @param flankAngle between a flank and a square one, rad: 0 square, 14.5° Acme, 15° trapezoidal
 */
public record Screw(double meanDiameter, double lead, double friction, double flankAngle) {
    /** Tangent of the lead angle. */
    double rise() {
        return lead / (Math.PI * meanDiameter);
    }

    /** Whether it stays done up when the handle is let go. */
    public boolean holdsItself() {
        return friction > StrictMath.cos(flankAngle) * rise();
    }
}

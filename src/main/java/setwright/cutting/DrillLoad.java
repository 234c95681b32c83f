package setwright.cutting;

/**
 * What a drill asks for.
 *
 * @param thrust along its axis, N
 * @param torque N·mm
 */
public record DrillLoad(double thrust, double torque) {
    /** Power at the cutter, W, at a spindle speed in rad/s. */
    public double power(double spindleSpeed) {
        return CuttingPower.power(torque, spindleSpeed);
    }
}

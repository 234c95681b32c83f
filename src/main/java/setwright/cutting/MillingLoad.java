package setwright.cutting;

import java.util.List;

/**
 * The load of a milling cut. Forces act on the cutter, feed +x, cross +y, as in {@link CutForce}; the work feels the
 * opposite.
 *
 * @param mean over a turn
 * @param peaks the moments of the largest forces
 * @param turn the force over a tooth pitch, by angle, the peaks among it; every tooth repeats it, so that it stands for
 *     the whole turn
 */
public record MillingLoad(MillingCut cut, CutForce mean, Peaks peaks, List<TurnPoint> turn) {
    public MillingLoad {
        turn = List.copyOf(turn);
    }

    /**
     * The moments of the largest forces.
     *
     * @param resultant where the force in the plane of the table is largest
     * @param torque where the torque of all teeth together is largest
     * @param feed where the force along the feed is largest either way
     * @param cross where the force across is largest either way
     * @param tooth where the torque of a single tooth is largest, with the force on that tooth alone
     */
    public record Peaks(TurnPoint resultant, TurnPoint torque, TurnPoint feed, TurnPoint cross, TurnPoint tooth) {}

    /** The tangential forces of all teeth together, in the mean over a turn, N. */
    public double meanTangential() {
        return mean.torque() / cut.cutter().radius();
    }

    /** The largest sum of the tangential forces of all teeth, N. */
    public double peakTangential() {
        return peakTorque() / cut.cutter().radius();
    }

    /** The largest tangential force on a single tooth, N. */
    public double peakToothTangential() {
        return peaks.tooth().force().torque() / cut.cutter().radius();
    }

    /** The largest force in the plane of the table, N. */
    public double peakResultant() {
        return peaks.resultant().force().resultant();
    }

    /** Where the tip of a tooth stands when the resultant is largest, rad. */
    public double peakAngle() {
        return peaks.resultant().angle();
    }

    /** The largest force along the feed, with its sign, N. */
    public double peakFeed() {
        return peaks.feed().force().feed();
    }

    /** The largest force across the feed, with its sign, N. */
    public double peakCross() {
        return peaks.cross().force().cross();
    }

    public double meanTorque() {
        return mean.torque();
    }

    public double peakTorque() {
        return peaks.torque().force().torque();
    }

    /** Power at the cutter in the mean over a turn, W, at a spindle speed in rad/s. */
    public double meanPower(double spindleSpeed) {
        return CuttingPower.power(meanTorque(), spindleSpeed);
    }

    /** Power at the moment of the largest torque, W, at a spindle speed in rad/s. */
    public double peakPower(double spindleSpeed) {
        return CuttingPower.power(peakTorque(), spindleSpeed);
    }

    /** The mean number of teeth in the cut. */
    public double teethEngaged() {
        return cut.teethEngaged();
    }
}

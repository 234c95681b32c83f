package setwright.rigidity.stability;

import setwright.cutting.Engagement;

/**
 * Teeth that follow one another through the same arc.
 *
 * @param teeth of the cutter, evenly spaced
 * @param arc that each cuts
 * @param specific tangential force for each mm² of chip, N/mm²
 * @param radialRatio radial to tangential force
 */
public record ToothCut(int teeth, Engagement arc, double specific, double radialRatio) {
    public ToothCut {
        if (!(teeth >= 1 && specific > 0 && radialRatio >= 0)) {
            throw new IllegalArgumentException("A cut has a tooth or more, a specific force above 0 N/mm² and a radial"
                    + " ratio from 0, not " + teeth + ", " + specific + ", " + radialRatio + ".");
        }
    }

    /** From one tooth to the next, rad. */
    public double pitch() {
        return 2 * Math.PI / teeth;
    }

    /** From one tooth to the next at a spindle speed in rad/s, s. */
    public double period(double speed) {
        return pitch() / speed;
    }

    /** The width of cut as a share of the diameter. */
    public double immersion() {
        return arc.width(1);
    }
}

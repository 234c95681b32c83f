package setwright.plan.cut;

import setwright.job.Operation;
import setwright.shop.Cutter;

/** How deep one goes in a pass on a manual mill without thinking about limits (common practice). */
final class UsualDepth {
    /** Of a face mill, mm. */
    private static final double FACE_MILL = 2;

    /** Of an end mill on a face, as a share of its diameter. */
    private static final double END_MILL_ON_A_FACE = 0.25;

    /** Of an end mill in the full, as a share of its diameter. */
    private static final double END_MILL = 0.5;

    private UsualDepth() {}

    /** mm. */
    static double of(Operation.Kind kind, Cutter cutter) {
        double diameter = cutter.diameter().inside();
        if (kind != Operation.Kind.FACE) {
            return END_MILL * diameter;
        }
        return cutter.form() == Cutter.Form.END_MILL ? END_MILL_ON_A_FACE * diameter : FACE_MILL;
    }
}

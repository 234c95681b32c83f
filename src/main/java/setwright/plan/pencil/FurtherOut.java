package setwright.plan.pencil;

import setwright.job.DrawnOperation;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/**
 * How much further out a tool may be set to save a knee height: its grip stays whole, and it does not stand out much more
 * (common practice). Only tools in a hole, which bend little; a cutter that mills is never set out for that.
 */
final class FurtherOut {
    /** Of what it stands out. */
    private static final double SHARE = 0.25;

    /** Of a shank that has to stay gripped, in its diameters. */
    private static final double LEAST_GRIP = 1.5;

    private FurtherOut() {}

    static double most(DrawnOperation operation, Cutter cutter, Holder holder) {
        if (!operation.kind().inHole()
                || !operation.stickOut().pencilled()
                || !operation.kneeHeight().pencilled()) {
            return 0;
        }
        double out = operation.stickOut().value().inside();
        double gripped = cutter.overallLength().inside() - out;
        double whole =
                Math.max(holder.grip().inside(), LEAST_GRIP * cutter.shank().inside());
        return Math.max(0, Math.min(gripped - whole, SHARE * out));
    }
}

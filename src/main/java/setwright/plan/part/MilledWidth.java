package setwright.plan.part;

import java.util.List;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.job.Block;
import setwright.job.ProfileCut;
import setwright.shop.ChamferMill;
import setwright.shop.Cutter;

/** How wide milled features are to the cutter that makes them, mm. */
public final class MilledWidth {
    private MilledWidth() {}

    /** The smallest radius that a cutter has to get into round an outline; infinite where it meets none. */
    public static double leastInnerRadius(ProfileCut cut) {
        return MilledFeatures.outline(cut).leastInnerRadius(cut.inside());
    }

    /** From the wall to the axis of a cone that cuts a chamfer along it. */
    public static double besideWall(Cutter cutter) {
        double tip = cutter instanceof ChamferMill mill ? mill.tipDiameter().inside() / 2 : 0;
        return tip + MilledDepth.TIP_BELOW * StrictMath.tan(Mouths.coneAngle(cutter) / 2);
    }

    /** The widest that stands outside a convex outline on its side; infinite where that cannot be said. */
    public static double outside(ProfileCut cut, Block block) {
        Rounded outline = MilledFeatures.outline(cut);
        if (cut.inside() || !outline.convex()) {
            return Double.POSITIVE_INFINITY;
        }
        Lying side = Lying.of(block, cut.side(), 0);
        double u = side.along().nominal().inside();
        double v = side.across().nominal().inside();
        Outline line = outline.outline();
        double widest = 0;
        for (Point2 corner : List.of(new Point2(0, 0), new Point2(u, 0), new Point2(u, v), new Point2(0, v))) {
            if (!line.contains(corner)) {
                widest = Math.max(widest, Region.of(line).distance(corner));
            }
        }
        return widest;
    }
}

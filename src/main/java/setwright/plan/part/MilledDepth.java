package setwright.plan.part;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.job.ArcSlot;
import setwright.job.Chamfer;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Keyseat;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.Size;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;

/** How deep milled features go below the finished side that they are on, mm. */
public final class MilledDepth {
    /** Over-run of an end mill through an edge, mm (common practice). */
    static final double OVER_RUN = 0.5;

    /** The tip of a chamfering cutter goes this far below the chamfer, mm (common practice). */
    static final double TIP_BELOW = 0.5;

    private MilledDepth() {}

    /** Height of a feature's floor over the table; through: below the part. Empty where it is not milled from above. */
    public static Optional<Double> floor(Feature feature, Heights heights) {
        return switch (feature.kind()) {
            case SLOT -> Optional.of(floor(((Slot) feature).depth(), heights));
            case ARC_SLOT -> Optional.of(floor(((ArcSlot) feature).depth(), heights));
            case POCKET -> Optional.of(floor(((Pocket) feature).depth(), heights));
            case PROFILE -> Optional.of(floor(((ProfileCut) feature).depth(), heights));
            case RADIUS_END -> Optional.of(floor(((RadiusEnd) feature).depth(), heights));
            case STEP -> Optional.of(floor(((Step) feature).depth(), heights));
            case T_SLOT -> Optional.of(floor(((TSlot) feature).depth(), heights));
            case DOVETAIL -> Optional.of(floor(((Dovetail) feature).depth(), heights));
            case KEYSEAT -> Optional.of(heights.finishedTop() - fromCrown((Keyseat) feature));
            case DIVIDED -> Optional.of(floor(((Divided) feature).depth(), heights));
            case FACE ->
                Optional.of(heights.partBottom()
                        + ((Face) feature).across().nominal().inside());
            case CHAMFER -> Optional.of(heights.finishedTop() - chamfer((Chamfer) feature));
            case HOLE, WOODRUFF_SEAT, FLATS, SLIT, INCLINED_FACE -> Optional.empty();
        };
    }

    private static double floor(@Nullable Size depth, Heights heights) {
        return depth == null
                ? heights.partBottom() - OVER_RUN
                : heights.finishedTop() - depth.nominal().inside();
    }

    /** How far the tip of the cutter goes below the side: the height of the chamfer and a little, so that no edge stays. */
    public static double chamfer(Chamfer chamfer) {
        return chamfer.width().nominal().inside()
                        * StrictMath.tan(chamfer.angle().inside())
                + TIP_BELOW;
    }

    /** Depth below the crown of the shaft; the side of a seat begins lower by the rise of the arc over its width. */
    static double fromCrown(Keyseat seat) {
        double depth = seat.depth().nominal().inside();
        double radius = seat.shaft().nominal().inside() / 2;
        double half = seat.width().nominal().inside() / 2;
        return switch (seat.from()) {
            case CROWN -> depth;
            case SIDE -> depth + radius - Math.sqrt(Math.max(0, radius * radius - half * half));
        };
    }
}

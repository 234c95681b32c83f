package setwright.plan.part;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.ArcSlot;
import setwright.job.Block;
import setwright.job.Chamfer;
import setwright.job.Divided;
import setwright.job.Dovetail;
import setwright.job.Edge;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Flats;
import setwright.job.InclinedFace;
import setwright.job.Keyseat;
import setwright.job.Placed;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.RadiusEnd;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.job.TSlot;
import setwright.job.WoodruffSeat;

/** How deep milled features go below the finished side that they are on, mm. */
public final class MilledDepth {
    /** The screw that holds a saw on its arbor stands out under it by so much, mm (common practice: a low head in a cap). */
    public static final double ARBOR_SCREW = 8;

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

    /** From the foot of a lying part up to what a disc cuts level into a side of it; empty for what is cut otherwise. */
    public static Optional<Double> level(Feature feature, Side up, Lying lying) {
        return switch (feature.kind()) {
            case SLIT -> level(feature.side(), ((Slit) feature).place(), ((Slit) feature).width(), up, lying);
            case WOODRUFF_SEAT ->
                level(feature.side(), ((WoodruffSeat) feature).place(), ((WoodruffSeat) feature).width(), up, lying);
            default -> Optional.empty();
        };
    }

    private static Optional<Double> level(Side side, Placed place, Size width, Side up, Lying lying) {
        double high = lying.upright().nominal().inside();
        double along = lying.along().nominal().inside() / 2;
        double across = lying.across().nominal().inside() / 2;
        Heights heights = new Heights(0, 0, 0, high, high, -along, -across, along, across);
        return SideBeside.of(new Laid(up, lying.quarterTurns(), null), side, heights)
                .map(beside -> beside.place(place).height() - width.nominal().inside() / 2);
    }

    /** What stands over a flat of a lying part, mm. */
    public static double overFlat(Flats flats, Heights heights) {
        return heights.startTop() - RoundAxis.flat(flats, heights);
    }

    /** The most that stands over an inclined face, square to it: over its lower edge. */
    public static double overIncline(InclinedFace face, Block block) {
        Lying lying = Lying.of(block, face.side(), 0);
        double angle = face.angle().inside();
        if (face.depth() != null) {
            return face.depth().nominal().inside() * StrictMath.cos(angle);
        }
        boolean alongU = face.falls() == Edge.LEFT || face.falls() == Edge.RIGHT;
        Size run = alongU ? lying.along() : lying.across();
        return run.nominal().inside() * StrictMath.sin(angle);
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

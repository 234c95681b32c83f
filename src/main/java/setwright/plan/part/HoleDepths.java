package setwright.plan.part;

import setwright.job.DrawnOperation;
import setwright.job.Hole;
import setwright.quantity.thread.Threads;
import setwright.reach.ThroughDepth;
import setwright.shop.Counterbore;
import setwright.shop.Cutter;
import setwright.shop.Drill;
import setwright.shop.Reamer;
import setwright.shop.SpotDrill;
import setwright.shop.Tap;

/** How deep the point of a tool goes for one hole, mm below the surface it starts from. */
public final class HoleDepths {
    /** A spot drill marks a hole this much wider than its size, so that the edge comes out broken (common practice). */
    private static final double SPOT_WIDER = 0.5;

    /** Over-run of an end mill through an edge (common practice). */
    private static final double MILL_OVER_RUN = 0.5;

    /** A hand needs so much between the work and a cutter that it fits from below, mm (common practice). */
    private static final double ROOM_TO_FIT = 10;

    private HoleDepths() {}

    /** @param thickness of the part under the surface */
    static double of(DrawnOperation operation, Cutter cutter, Hole hole, double thickness) {
        switch (operation.kind()) {
            case COUNTERBORE, SPOTFACE, COUNTERSINK -> {
                if (fromBehind(cutter)) {
                    return thickness + cutter.fluteLength().inside() + ROOM_TO_FIT;
                }
                return Mouths.depth(operation.kind(), cutter, hole);
            }
            default -> {
                if (cutter instanceof SpotDrill spot) {
                    return spot(hole, spot);
                }
            }
        }
        return hole.through()
                ? through(cutter, thickness).travel()
                : operation.depth().value().inside() + through(cutter, 0).point();
    }

    /** Whether it is fitted to its bar below the work and drawn up. */
    public static boolean fromBehind(Cutter cutter) {
        return cutter instanceof Counterbore counterbore && counterbore.fromBehind();
    }

    /** How deep a spot drill goes to mark a hole. */
    public static double spot(Hole hole, SpotDrill spot) {
        double marked = Math.min(
                hole.size().nominal().inside() + SPOT_WIDER, spot.diameter().inside());
        return ThroughDepth.pointLength(marked, spot.pointAngle().inside());
    }

    /** How far a tool goes through a part of a thickness: past its point, bevel or lead, and the over-run of its kind. */
    static ThroughDepth through(Cutter cutter, double thickness) {
        return switch (cutter.form()) {
            case REAMER ->
                ThroughDepth.reamer(thickness, ((Reamer) cutter).bevel().inside());
            case TAP ->
                ThroughDepth.tap(
                        thickness,
                        ((Tap) cutter).leadThreads(),
                        Threads.listed().read(((Tap) cutter).thread()).pitch());
            case DRILL ->
                ThroughDepth.drill(
                        thickness,
                        cutter.diameter().inside(),
                        ((Drill) cutter).pointAngle().inside());
            case END_MILL,
                    FACE_MILL,
                    SPOT_DRILL,
                    CENTRE_DRILL,
                    COUNTERSINK,
                    COUNTERBORE,
                    FLY_CUTTER,
                    SHELL_MILL,
                    BORING_BAR,
                    SLITTING_SAW,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    CHAMFER_MILL,
                    CORNER_ROUNDER,
                    FORM_CUTTER,
                    SCRIBER -> new ThroughDepth(thickness, 0, MILL_OVER_RUN);
        };
    }
}

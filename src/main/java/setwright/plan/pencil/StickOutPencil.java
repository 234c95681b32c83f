package setwright.plan.pencil;

import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.shop.Cutter;
import setwright.shop.FaceMill;
import setwright.shop.Holder;

/** Stick-out: as short as the holder's grip allows without gripping the flutes, rounded up to what one can set. */
final class StickOutPencil {
    /** A shank goes this far into a collet before the drawbar or the chuck's screw is in the way, mm (common practice). */
    private static final double COLLET_DEPTH = 50;

    /** A tool whose edge is short stands out at least so far, so that one sees the edge that it breaks (common practice). */
    private static final double SHORT_HEAD = 20;

    private final Drafting drafting;

    StickOutPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    Typed<Length> choose(Cutter cutter, Holder holder) {
        return switch (cutter.form()) {
            case FACE_MILL -> ((FaceMill) cutter).bodyHeight();
            case SHELL_MILL, SLITTING_SAW, FORM_CUTTER -> cutter.overallLength();
            case END_MILL,
                    SPOT_DRILL,
                    DRILL,
                    REAMER,
                    TAP,
                    COUNTERBORE,
                    FLY_CUTTER,
                    BORING_BAR,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    SCRIBER -> drafting.length(drafting.set(shortest(cutter, holder)));
            case CENTRE_DRILL, COUNTERSINK, CHAMFER_MILL, CORNER_ROUNDER ->
                drafting.length(drafting.set(Math.max(SHORT_HEAD, shortest(cutter, holder))));
        };
    }

    private static double shortest(Cutter cutter, Holder holder) {
        double shank = cutter.overallLength().inside() - cutter.fluteLength().inside();
        return cutter.overallLength().inside() - Math.min(deepest(holder), Math.max(shank, 0));
    }

    /** How far in a shank goes: a collet is open at its back, a chuck and a set screw holder end where they grip. */
    private static double deepest(Holder holder) {
        return switch (holder.style()) {
            case SPINDLE_COLLET, COLLET_CHUCK, FLOATING_REAMER_HOLDER ->
                Math.max(holder.grip().inside(), COLLET_DEPTH);
            case SET_SCREW,
                    DRILL_CHUCK_KEYED,
                    DRILL_CHUCK_KEYLESS,
                    FACE_MILL_ARBOR,
                    SCREWED_SHANK_CHUCK,
                    SHRINK,
                    SHELL_MILL_ARBOR,
                    FLY_CUTTER_BODY,
                    BORING_HEAD,
                    STUB_ARBOR,
                    TAPER_SOCKET,
                    TAPPING_HEAD -> holder.grip().inside();
        };
    }
}

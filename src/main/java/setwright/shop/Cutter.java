package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A tool that cuts: common to all of them are size, shank, lengths and what the edge is made of. */
public sealed interface Cutter extends Owned
        permits EndMill,
                FaceMill,
                SpotDrill,
                Drill,
                Reamer,
                Tap,
                CentreDrill,
                Countersink,
                Counterbore,
                FlyCutter,
                BoringBar,
                KeyseatCutter,
                TSlotCutter,
                DovetailCutter,
                ChamferMill,
                CornerRounder,
                Scriber,
                BoredCutter {
    Form form();

    ToolMaterial material();

    /** The diameter that it cuts; for a tap the major diameter of its thread. */
    Typed<Length> diameter();

    Typed<Length> shank();

    ShankForm shankForm();

    /** From the tip to the end of the flutes or threads. */
    Typed<Length> fluteLength();

    /** From the tip to the end of the shank. */
    Typed<Length> overallLength();

    int teeth();

    @Override
    default Kind kind() {
        return Kind.CUTTER;
    }

    /** Included angle of its point, rad; a half turn where it ends flat. */
    default double tipAngle() {
        return Math.PI;
    }

    /** Helix of its flutes, rad; nought where they are straight. */
    default double fluteHelix() {
        return 0;
    }

    /** Between its edges and its axis, rad; nought for a square shoulder. */
    default double edgeLead() {
        return 0;
    }

    /** Whether it has a bore and sits on an arbor. */
    default boolean bored() {
        return shankForm() == ShankForm.BORE;
    }

    /** The forms of cutter. */
    enum Form {
        END_MILL,
        FACE_MILL,
        SPOT_DRILL,
        DRILL,
        REAMER,
        TAP,
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
        SCRIBER;

        /** The form whose cutting speeds stand for this one where the shop has none of its own (common practice). */
        public Form cutsLike() {
            return switch (this) {
                case END_MILL, FACE_MILL, SPOT_DRILL, DRILL, REAMER, TAP -> this;
                case CENTRE_DRILL, COUNTERSINK -> SPOT_DRILL;
                case COUNTERBORE -> DRILL;
                case FLY_CUTTER, SHELL_MILL -> FACE_MILL;
                case BORING_BAR,
                        SLITTING_SAW,
                        KEYSEAT_CUTTER,
                        T_SLOT_CUTTER,
                        DOVETAIL_CUTTER,
                        CHAMFER_MILL,
                        CORNER_ROUNDER,
                        FORM_CUTTER,
                        SCRIBER -> END_MILL;
            };
        }
    }
}

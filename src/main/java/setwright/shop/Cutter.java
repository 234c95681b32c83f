package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A tool that cuts: common to all of them are size, shank, lengths and what the edge is made of. */
public sealed interface Cutter extends ShopRow permits EndMill, FaceMill, SpotDrill, Drill, Reamer, Tap {
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

    Kept kept();

    @Override
    default Kind kind() {
        return Kind.CUTTER;
    }

    /** The forms of cutter. */
    enum Form {
        END_MILL,
        FACE_MILL,
        SPOT_DRILL,
        DRILL,
        REAMER,
        TAP
    }
}

package setwright.plan.cut;

import java.util.Optional;
import setwright.holding.ShankGrip;
import setwright.quantity.Band;
import setwright.shop.Holder;

/** What a holder holds a smooth shank with. */
public final class ShankHold {
    private ShankHold() {}

    /** N along the shank; empty where something drives the shank. */
    public static Optional<Band> of(Holder holder) {
        return switch (holder.style()) {
            case SPINDLE_COLLET -> Optional.of(ShankGrip.r8Collet());
            case COLLET_CHUCK -> Optional.of(ShankGrip.colletChuck());
            case DRILL_CHUCK_KEYED, DRILL_CHUCK_KEYLESS -> Optional.of(ShankGrip.drillChuck());
            case SET_SCREW,
                    FACE_MILL_ARBOR,
                    SCREWED_SHANK_CHUCK,
                    SHRINK,
                    SHELL_MILL_ARBOR,
                    FLY_CUTTER_BODY,
                    BORING_HEAD,
                    STUB_ARBOR,
                    TAPER_SOCKET,
                    TAPPING_HEAD,
                    FLOATING_REAMER_HOLDER -> Optional.empty();
        };
    }
}

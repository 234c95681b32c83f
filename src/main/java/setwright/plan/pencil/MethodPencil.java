package setwright.plan.pencil;

import java.util.Optional;
import setwright.job.Operation;
import setwright.shop.Cutter;
import setwright.shop.Machine;
import setwright.shop.Tap;

/** How a tool is fed or turned, where there are several ways (common practice). */
final class MethodPencil {
    /** From this many parts on a tap that throws its chips ahead is run under power. */
    private static final int POWER_TAPPING_FROM = 4;

    private final Drafting drafting;

    MethodPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    Operation.Method choose(Operation operation, Optional<Cutter> cutter) {
        return switch (operation.kind()) {
            case FACE, STEP, PROFILE, POCKET, SLOT, KEYSEAT, T_SLOT, DOVETAIL, WOODRUFF, SAW, CHAMFER, FORM, SCRIBE ->
                Operation.Method.TABLE_FEED;
            case SPOT, REAM, BORE, COUNTERBORE, SPOTFACE, COUNTERSINK -> Operation.Method.QUILL_LEVER;
            case DRILL ->
                cutter.filter(this::quillMayCarry).isPresent()
                        ? Operation.Method.QUILL_POWER
                        : Operation.Method.QUILL_LEVER;
            case TAP ->
                cutter.filter(this::underPower).isPresent()
                        ? Operation.Method.TAP_UNDER_POWER
                        : Operation.Method.TAP_BY_HAND_GUIDED;
        };
    }

    private boolean quillMayCarry(Cutter drill) {
        Machine machine = drafting.rows().machine();
        return !machine.quillFeeds().isEmpty()
                && machine.quillFeedLargestDrill() != null
                && drill.diameter().inside() <= machine.quillFeedLargestDrill().inside();
    }

    private boolean underPower(Cutter tap) {
        return ((Tap) tap).flute() == Tap.Flute.SPIRAL_POINT
                && drafting.job().plan().numberOff() >= POWER_TAPPING_FROM;
    }
}

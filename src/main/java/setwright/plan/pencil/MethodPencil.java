package setwright.plan.pencil;

import java.util.Optional;
import setwright.job.Operation;
import setwright.job.Plannable;
import setwright.shop.Cutter;
import setwright.shop.EndMill;
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

    /** A cutter that the pencil had to take without a centre edge is wound down into what is closed. */
    private Operation.Method milled(Operation operation, Optional<Cutter> cutter) {
        boolean open = cutter.filter(EndMill.class::isInstance)
                .map(EndMill.class::cast)
                .filter(mill -> !mill.centreCutting())
                .isPresent();
        return open && operation.cutter() instanceof Plannable.Pencilled<String>
                ? Operation.Method.WOUND_DOWN
                : Operation.Method.TABLE_FEED;
    }

    Operation.Method choose(Operation operation, Optional<Cutter> cutter) {
        return switch (operation.kind()) {
            case PROFILE, POCKET, SLOT, KEYSEAT -> milled(operation, cutter);
            case FACE, STEP, T_SLOT, DOVETAIL, WOODRUFF, SAW, CHAMFER, FORM, SCRIBE -> Operation.Method.TABLE_FEED;
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

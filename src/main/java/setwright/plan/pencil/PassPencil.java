package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.job.Drawn;
import setwright.job.DrawnOperation;
import setwright.job.Operation;
import setwright.job.Standing;
import setwright.plan.cut.CutPlace;
import setwright.plan.cut.PassChoice;
import setwright.plan.part.Heights;
import setwright.quantity.Length;
import setwright.quantity.Speed;
import setwright.quantity.Typed;

/** Depth and feed of milled passes: as much as their limits leave. */
record PassPencil(Drafting drafting, Side up, Heights heights) {
    /**
     * @param draft with the feed of the table, its depth still open
     * @param earlier operations of the set-up before it
     */
    DrawnOperation passes(Operation ink, DrawnOperation draft, List<DrawnOperation> earlier) {
        DepthPencil depths = new DepthPencil(drafting);
        CutPlace place = depths.place(ink, heights, faced(earlier));
        Optional<PassChoice> choice = choice(draft, place);
        if (choice.isEmpty()) {
            return draft;
        }
        boolean open = draft.depth().pencilled() && PassChoice.inPasses(ink.kind());
        Drawn<Typed<Length>> depth = open
                ? new Drawn<>(depths.pass(place, choice.get().depth().passes()), Standing.PENCILLED)
                : draft.depth();
        Drawn<Typed<Speed>> feed = draft.feed().pencilled()
                ? new Drawn<>(drafting.feed(choice.get().feed(depth.value().inside())), Standing.PENCILLED)
                : draft.feed();
        return lastly(draft.taking(draft.stickOut(), depth, draft.width(), draft.speed(), feed), place);
    }

    /** Once more at the same setting, where so much stays on. */
    private DrawnOperation lastly(DrawnOperation drawn, CutPlace place) {
        boolean open = drawn.lastPass().pencilled() && drawn.lastPass().value() == Operation.LastPass.ONE;
        return open
                        && choice(drawn, place)
                                .filter(PassChoice::asksForSpringPass)
                                .isPresent()
                ? drawn.lastly(new Drawn<>(Operation.LastPass.WITH_SPRING_PASS, Standing.PENCILLED))
                : drawn;
    }

    /** Whether it is a toleranced slot that would come too wide. */
    boolean comesWide(Operation ink, DrawnOperation drawn, List<DrawnOperation> earlier) {
        return (ink.kind() == Operation.Kind.SLOT || ink.kind() == Operation.Kind.KEYSEAT)
                && choice(drawn, new DepthPencil(drafting).place(ink, heights, faced(earlier)))
                        .filter(PassChoice::slotComesWide)
                        .isPresent();
    }

    private Optional<PassChoice> choice(DrawnOperation drawn, CutPlace place) {
        return PassChoice.of(up, drawn, drafting.rows(), heights, place);
    }

    private static boolean faced(List<DrawnOperation> earlier) {
        return earlier.stream().anyMatch(one -> one.kind() == Operation.Kind.FACE);
    }
}

package setwright.caution.check;

import java.util.List;
import java.util.function.UnaryOperator;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.Drawn;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.ViseField;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;

/** The part put elsewhere in its vise. */
record PlaceChanges(Plan plan, String setUp) {
    /** To the middle of the jaws. */
    List<Proposal> toTheMiddle() {
        PackingChanges held = new PackingChanges(plan, setUp);
        if (!held.inVise()) {
            return List.of();
        }
        Drawn<Typed<Length>> now = held.vise().offset();
        Typed<Length> nothing = new Reading(plan.job().plan().units()).length("0");
        return List.of(new Proposal(
                Way.PART_PLACE,
                "Set the part in the middle of the jaws " + Words.now(now) + ".",
                Edits.set(plan.drawnUp(), setUp, ViseField.OFFSET, Plannable.inked(nothing))));
    }

    /** Turned about the upright axis by so many quarter turns more. */
    Proposal turned(int quarters, String text) {
        return new Proposal(Way.PART_PLACE, text, with(before -> turned(before, quarters)));
    }

    private static SetUp turned(SetUp before, int quarters) {
        return before.withQuarterTurns(Math.floorMod(before.quarterTurns() + quarters, 4));
    }

    Job with(UnaryOperator<SetUp> change) {
        List<SetUp> all = Edits.written(plan.drawnUp()).stream()
                .map(one -> one.id().equals(setUp) ? change.apply(one) : one)
                .toList();
        return plan.job().withPlan(plan.job().plan().withSetUps(all));
    }
}

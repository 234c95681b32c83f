package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** Lighter cuts. */
record CutChanges(Plan plan, DrawnOperation operation) {
    static CutChanges of(Plan plan, Caution caution) {
        return new CutChanges(plan, Operations.operation(plan, caution.setUp(), caution.operation()));
    }

    /** A milling pass of two thirds and of a third of its depth. */
    List<Proposal> shallower() {
        if (operation.kind() != Operation.Kind.FACE) {
            return List.of();
        }
        double now = operation.depth().value().inside();
        return List.of(pass(now * 2 / 3), pass(now / 3));
    }

    private Proposal pass(double mm) {
        Typed<Length> depth = new Words(plan).typed(mm);
        return new Proposal(
                Way.DEPTH,
                "Take " + depth.text() + " a pass " + Words.now(operation.depth()) + ".",
                Edits.set(plan.drawnUp(), operation.id(), OperationField.DEPTH, Plannable.inked(depth)));
    }
}

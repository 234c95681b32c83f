package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A light last pass, and one more at the same setting. */
record LastPassChanges(Plan plan, DrawnOperation operation) {
    /** Stock for a last pass, mm (common practice). */
    private static final List<Double> STOCK = List.of(0.25, 0.1);

    static LastPassChanges of(Plan plan, Caution caution) {
        return new LastPassChanges(plan, Operations.operation(plan, caution.setUp(), caution.operation()));
    }

    List<Proposal> all() {
        List<Proposal> all = new ArrayList<>();
        double now = operation.finish().value().inside();
        for (double stock : STOCK) {
            if (now == 0 || stock < now) {
                all.add(lastPass(stock, Operation.LastPass.ONE));
            }
        }
        all.add(lastPass(now > 0 ? Math.min(now, STOCK.get(0)) : STOCK.get(0), Operation.LastPass.WITH_SPRING_PASS));
        return all;
    }

    private Proposal lastPass(double stock, Operation.LastPass pass) {
        Typed<Length> typed = new Words(plan).typed(stock);
        Job left = Edits.set(plan.drawnUp(), operation.id(), OperationField.FINISH, Plannable.inked(typed));
        Job both = left.withPlan(ran(left.plan(), pass));
        String again = pass == Operation.LastPass.WITH_SPRING_PASS ? ", and run it once more at the same setting" : "";
        return new Proposal(Way.DEPTH, "Give a last pass " + typed.text() + " to take" + again + ".", both);
    }

    private JobPlan ran(JobPlan job, Operation.LastPass pass) {
        return job.withSetUps(job.setUps().stream()
                .map(setUp -> setUp.withOperations(setUp.operations().stream()
                        .map(one -> one.id().equals(operation.id())
                                ? OperationField.LAST_PASS.write(one, Plannable.inked(pass))
                                : one)
                        .toList()))
                .toList());
    }
}

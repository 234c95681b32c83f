package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.cutting.ChiselFactors;
import setwright.job.DrawnOperation;
import setwright.job.Edits;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.OperationField;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.plan.Plan;
import setwright.shop.Cutter;

/** A hole as wide as the web of a drill, drilled before it. */
record PilotHole(Plan plan, String setUp, DrawnOperation drill, Cutter pilot) {
    /** With the smallest drill of the shop that takes the whole web away; none where the shop has none. */
    static Optional<PilotHole> of(Plan plan, Caution caution) {
        DrawnOperation drill = Operations.operation(plan, caution.setUp(), caution.operation());
        double diameter = plan.rows()
                .cutter(drill.cutter().value())
                .map(cutter -> cutter.diameter().inside())
                .orElse(0.0);
        return plan.rows().all(Cutter.class).stream()
                .filter(cutter ->
                        cutter.form() == Cutter.Form.DRILL && cutter.kept().owned() != 0)
                .filter(cutter -> cutter.diameter().inside() >= ChiselFactors.STANDARD_WEB * diameter)
                .filter(cutter -> cutter.diameter().inside() < diameter)
                .min(Comparator.comparingDouble(
                                (Cutter cutter) -> cutter.diameter().inside())
                        .thenComparing(Cutter::id))
                .map(cutter -> new PilotHole(plan, caution.setUp(), drill, cutter));
    }

    /** Writes the set-up down, so that there is an order to put the pilot into. */
    Proposal drilledFirst() {
        Job written = Edits.set(
                plan.drawnUp(),
                drill.id(),
                OperationField.CUTTER,
                Plannable.inked(drill.cutter().value()));
        Job changed = written.withPlan(written.plan()
                .withSetUps(written.plan().setUps().stream()
                        .map(one -> one.id().equals(setUp) ? with(one) : one)
                        .toList()));
        return new Proposal(Way.CUTTER, "Drill a pilot with the " + pilot.name() + " first.", changed);
    }

    private SetUp with(SetUp before) {
        List<Operation> operations = new ArrayList<>();
        for (Operation one : before.operations()) {
            if (one.id().equals(drill.id())) {
                operations.add(OperationField.CUTTER.write(
                        Operation.pencilled(drill.id() + "-pilot", Operation.Kind.DRILL, drill.features()),
                        Plannable.inked(pilot.id())));
            }
            operations.add(one);
        }
        return before.withOperations(operations);
    }
}

package setwright.caution.check;

import java.util.List;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.Edits;
import setwright.job.Plannable;
import setwright.job.ViseField;
import setwright.job.ViseHolding;
import setwright.plan.Plan;
import setwright.shop.SoftJaws;
import setwright.shop.Vise;

/** Other jaws on the vise. */
record JawChanges(Plan plan, String setUp) {
    /** Something else at the moving jaw. */
    List<Proposal> between(ViseHolding.Between between, String text) {
        if (!new PackingChanges(plan, setUp).inVise()) {
            return List.of();
        }
        return List.of(new Proposal(
                Way.PACKING_THICKNESS,
                text,
                Edits.set(plan.drawnUp(), setUp, ViseField.BETWEEN, Plannable.inked(between))));
    }

    /** Soft jaws that fit the vise and are owned. */
    List<Proposal> soft() {
        PackingChanges packing = new PackingChanges(plan, setUp);
        if (!packing.inVise()) {
            return List.of();
        }
        String vise = packing.vise().vise().value();
        double width = plan.rows()
                .vise(vise)
                .map(Vise::jawWidth)
                .map(typed -> typed.inside())
                .orElse(0.0);
        return plan.rows().all(SoftJaws.class).stream()
                .filter(row ->
                        row.kept().owned() != 0 && Math.abs(row.jawWidth().inside() - width) < 1)
                .map(row -> new Proposal(
                        Way.DEVICE,
                        "Take the " + row.name() + ", cut to the part.",
                        Edits.set(plan.drawnUp(), setUp, ViseField.JAWS, Plannable.inked(row.id()))))
                .toList();
    }
}

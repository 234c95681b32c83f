package setwright.caution.check;

import java.util.List;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.job.Holding;
import setwright.job.Plannable;
import setwright.job.ViseHolding;
import setwright.plan.Plan;
import setwright.shop.SoftJaws;
import setwright.shop.Vise;

/** Other jaws on the vise. */
record JawChanges(Plan plan, String setUp) {
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
                        new PlaceChanges(plan, setUp)
                                .with(before -> before.withHolding(on(before.holding(), row.id())))))
                .toList();
    }

    private static ViseHolding on(Holding before, String jaws) {
        ViseHolding vise = before.kind() == Holding.Kind.VISE ? (ViseHolding) before : ViseHolding.pencilled();
        Plannable<Integer> parts = vise.parts();
        return new ViseHolding(
                vise.vise(),
                vise.seat(),
                vise.parallels(),
                vise.parallelHeight(),
                vise.parallelInset(),
                vise.grip(),
                vise.offset(),
                jaws,
                parts,
                vise.stops());
    }
}

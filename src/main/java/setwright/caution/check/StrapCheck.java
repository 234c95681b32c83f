package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.job.Strapping;
import setwright.plan.Plan;
import setwright.plan.part.StrapPlace;

/** A check that looks at every strap by itself. */
interface StrapCheck extends Check {
    /** What it finds at one strap of a set-up. */
    Finding look(Strapped in, StrapPlace strap);

    /** How that strap might be laid otherwise. */
    List<Proposal> proposals(StrapChanges changes);

    /** Which clamps it looks at: what presses down on the part. */
    default List<Strapping.By> of() {
        return List.of(Strapping.By.STRAP, Strapping.By.BOLT);
    }

    @Override
    default List<Finding> look(Plan plan) {
        return Strapped.all(plan).stream()
                .flatMap(in -> in.straps().stream()
                        .filter(strap -> of().contains(strap.by()))
                        .map(strap -> look(in, strap)))
                .toList();
    }

    @Override
    default List<Proposal> proposals(Plan plan, Caution caution) {
        return StrapChanges.of(plan, caution.setUp(), caution.subject())
                .map(this::proposals)
                .orElse(List.of());
    }
}

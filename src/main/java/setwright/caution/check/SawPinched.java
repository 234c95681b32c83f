package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.outcome.Pinched;
import setwright.quantity.Unit;

/** What holds the part on both sides of a kerf closes it on the saw. */
public final class SawPinched implements Check {
    @Override
    public String slug() {
        return "saw-pinched";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Pinched> all = Pinched.of(plan.drawnUp(), plan.rows(), plan.part());
        return Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.SAW)
                .map(in -> plan.part().operation(in.operation().id()).isEmpty()
                        ? in.unlooked(slug(), Operations.FOR_ROOM)
                        : of(all, in).map(pinched -> fails(in, pinched)).orElse(Finding.HOLDS))
                .toList();
    }

    private static Optional<Pinched> of(List<Pinched> all, Operations.In in) {
        return all.stream()
                .filter(pinched -> pinched.operation().equals(in.operation().id()))
                .findFirst();
    }

    private Finding fails(Operations.In in, Pinched pinched) {
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), in.operation().id(), "kerf", pinched.clamp()),
                "How far " + pinched.clamp() + " reaches over the kerf",
                Figure.atMost(0, pinched.over(), Unit.MM));
        return Finding.fails(
                margin,
                Severity.CAUTION,
                "The kerf of " + in.cutter() + " " + in.at() + " closes on it: " + pinched.clamp() + " holds both sides"
                        + " of it, " + new Words(in.plan()).length(pinched.over()) + " beyond. The saw jams and breaks:"
                        + " grip one side only, or set a wedge into the kerf as it opens.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>(StrapChanges.away(plan, caution));
        PackingChanges packing = new PackingChanges(plan, caution.setUp());
        if (packing.inVise()) {
            all.addAll(packing.higher());
        }
        return all;
    }
}

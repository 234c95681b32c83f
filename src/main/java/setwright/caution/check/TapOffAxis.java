package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Operation;
import setwright.plan.Plan;

/** The part is moved between drilling and tapping: the tap is not over its hole, and breaks or runs askew. */
public final class TapOffAxis implements Check {
    @Override
    public String slug() {
        return "tap-off-axis";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.TAP)
                .map(this::look)
                .toList();
    }

    private Finding look(Operations.In tap) {
        return Operations.all(tap.plan())
                .filter(in -> in.operation().kind() == Operation.Kind.DRILL)
                .filter(in -> in.operation().features().stream()
                        .anyMatch(tap.operation().features()::contains))
                .filter(in -> !in.setUp().id().equals(tap.setUp().id()))
                .findFirst()
                .map(drilled -> fails(tap, drilled))
                .orElse(Finding.HOLDS);
    }

    private Finding fails(Operations.In tap, Operations.In drilled) {
        Words words = new Words(tap.plan());
        String cutter = words.cutter(tap.operation());
        return Finding.fails(
                Caution.Place.of(
                        tap.setUp().id(),
                        tap.operation().id(),
                        drilled.operation().id(),
                        cutter),
                slug(),
                Severity.CAUTION,
                cutter + " " + tap.at() + " follows a hole that was drilled in another loading " + drilled.at()
                        + ". The tap is off its axis by what loading is out: bring it over each hole by a pointer first, or"
                        + " change to a floating holder.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        DrawnSetUp from = Operations.setUp(plan, caution.setUp());
        DrawnOperation tap = Operations.operation(plan, caution.setUp(), caution.operation());
        return Operations.all(plan)
                .filter(in -> in.operation().id().equals(caution.subject()))
                .flatMap(drilled -> new OrderChanges(plan).into(drilled.setUp(), from, tap.features()).stream())
                .toList();
    }
}

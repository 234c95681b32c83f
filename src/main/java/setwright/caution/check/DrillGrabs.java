package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Severity;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.quantity.Unit;

/** A drill breaks through sheet before its full diameter is in: it grabs and lifts or spins the part. */
public final class DrillGrabs implements Check {
    /** Sheet thinner than this share of the drill (common practice). */
    private static final double SHARE = 0.3;

    @Override
    public String slug() {
        return "drill-grabs";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (Clamped in : Clamped.all(plan)) {
            in.operations()
                    .filter(one -> one.operation().kind() == Operation.Kind.DRILL)
                    .filter(one -> Holes.of(one.operation(), plan.job()).anyMatch(Hole::through))
                    .forEach(one -> plan.rows()
                            .cutter(one.operation().cutter().value())
                            .ifPresent(drill ->
                                    found.add(look(in, one, drill.diameter().inside()))));
        }
        return found;
    }

    private Finding look(Clamped in, Operations.In one, double drill) {
        double thick = in.heights().finishedTop() - in.heights().partBottom();
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), one.operation().id(), "sheet", "part"),
                "Thickness under " + new Words(in.plan()).cutter(one.operation()),
                Figure.atLeast(SHARE * drill, thick, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, one, margin.figure()));
    }

    private static String message(Clamped in, Operations.In one, Figure figure) {
        Words words = new Words(in.plan());
        return words.cutter(one.operation()) + " breaks through a part " + words.length(figure.value())
                + " thick before its full diameter is in " + one.at() + "; " + words.length(figure.limit())
                + " is asked. It grabs and lifts the part: clamp it on backing, or take a step drill or a hole cutter.";
    }
}

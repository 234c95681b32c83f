package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.quantity.Unit;

/** A boring bar that is bigger than the hole it starts in. */
public final class BarDoesNotFitHole implements Check {
    @Override
    public String slug() {
        return "bar-does-not-fit-hole";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Bored.all(plan).map(this::look).toList();
    }

    private Finding look(Bored bored) {
        Operations.In in = bored.in();
        double hole = in.plan()
                .part()
                .operation(in.operation().id())
                .flatMap(OperationStage::holeBefore)
                .orElse(0.0);
        double least = bored.bar().diameter().inside();
        Margin margin = Margin.of(
                slug(),
                in.place("start-hole"),
                "Hole that " + in.cutter() + " starts in",
                Figure.atLeast(least, hole, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, hole, least));
    }

    private static String message(Operations.In in, double hole, double least) {
        Words words = new Words(in.plan());
        String there = hole > 0 ? "finds a hole of " + words.length(hole) : "finds no hole to start in";
        return in.cutter() + " " + there + " " + in.at() + " and wants " + words.length(least)
                + ". Its back rubs before its edge cuts: drill larger first, or take a thinner bar.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return Bored.otherBars(plan, caution);
    }
}

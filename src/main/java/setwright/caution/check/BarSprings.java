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
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.SurfaceLeft.Surface;
import setwright.plan.cut.Tolerated;
import setwright.quantity.Unit;

/** The boring bar gives under its last cut and leaves a toleranced bore small. */
public final class BarSprings implements Check {
    @Override
    public String slug() {
        return "bar-springs";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.BORE)
                .forEach(in -> Tolerated.of(in.features()).ifPresent(allowed -> found.add(look(in, allowed))));
        return found;
    }

    private Finding look(Operations.In in, Tolerated allowed) {
        return in.plan()
                .cut()
                .operation(in.operation().id())
                .flatMap(cut -> judged(in, cut, allowed))
                .orElseGet(() -> in.unlooked(slug(), Operations.FOR_CUT));
    }

    private Optional<Finding> judged(Operations.In in, OperationCut cut, Tolerated allowed) {
        return cut.left(Surface.BORE).map(left -> {
            Margin margin = Margin.of(
                            slug(),
                            in.place("bore"),
                            "Spring of " + in.cutter() + " in the bore, on the radius",
                            Figure.atMost(allowed.out(), left.inside(), Unit.MM))
                    .between(left.band());
            return margin.figure().holds()
                    ? Finding.holds(margin)
                    : Finding.fails(margin, Severity.CAUTION, message(in, left.inside(), allowed));
        });
    }

    private static String message(Operations.In in, double left, Tolerated allowed) {
        Words words = new Words(in.plan());
        return in.cutter() + " gives under its last cut and leaves the bore " + words.fine(2 * left)
                + " small on the diameter " + in.at() + "; the drawing allows " + words.fine(2 * allowed.out())
                + " either way: take a spring pass, a lighter last cut, or a shorter or thicker bar.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(LastPassChanges.of(plan, caution).all());
        all.addAll(tool.asShortAsItHolds());
        all.addAll(tool.otherHolders());
        return all;
    }
}

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
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Operation;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** The last pass leaves a toleranced face out because the tool leans: its tip stands off the face across its width. */
public final class ToolSprings implements Check {
    @Override
    public String slug() {
        return "tool-springs";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.FACE)
                .forEach(in -> toleranced(in).ifPresent(size -> found.add(look(in, size))));
        return found;
    }

    /** The toleranced size of the face that an operation cuts; empty where the drawing leaves it general. */
    static Optional<Size> toleranced(Operations.In in) {
        return in.plan().job().plan().features().stream()
                .filter(feature -> in.operation().features().contains(feature.id()))
                .filter(feature -> feature.kind() == Feature.Kind.FACE)
                .map(feature -> ((Face) feature).across())
                .filter(Size::toleranced)
                .findFirst();
    }

    private Finding look(Operations.In in, Size size) {
        Optional<Value> leaves = in.plan().cut().operation(in.operation().id()).map(OperationCut::leaves);
        if (leaves.isEmpty()) {
            return in.unlooked(slug(), "a cutter in its holder with its load");
        }
        double half = (size.greatestMm() - size.leastMm()) / 2;
        double left = Math.abs(leaves.get().inside());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), in.operation().id(), "face", "face"),
                "Lean of " + new Words(in.plan()).cutter(in.operation()) + " across the face",
                Figure.atMost(half, left, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, left, half));
    }

    private static String message(Operations.In in, double left, double half) {
        Words words = new Words(in.plan());
        return words.cutter(in.operation()) + " leans under the cut and leaves the face " + words.fine(left) + " out "
                + in.at() + "; the drawing allows " + words.fine(half)
                + " either way. Less stick-out, a lighter last pass, or a stouter cutter.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.asShortAsItHolds());
        all.addAll(CutChanges.of(plan, caution).shallower());
        all.addAll(tool.otherHolders());
        return all;
    }
}

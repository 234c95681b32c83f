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
import setwright.cutting.MillingLoad;
import setwright.job.Operation;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.plan.part.Heights;
import setwright.quantity.Unit;
import setwright.rigidity.Plank;

/** The part stands out beyond the jaws and gives under the cut. */
public final class WorkSprings implements Check {
    @Override
    public String slug() {
        return "work-springs";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Clamped.all(plan).stream()
                .filter(in -> overhang(in) > 0)
                .forEach(in -> in.operations()
                        .filter(one -> one.operation().kind() == Operation.Kind.FACE)
                        .forEach(one -> ToolSprings.toleranced(one)
                                .flatMap(size -> look(in, one, size))
                                .ifPresent(found::add)));
        return found;
    }

    /** How far the part stands out beyond the jaws, at the end where it is more, mm. */
    private static double overhang(Clamped in) {
        double half = in.vise().jawWidth().inside() / 2;
        return Math.max(in.heights().right() - half, -in.heights().left() - half);
    }

    private Optional<Finding> look(Clamped in, Operations.In one, Size size) {
        return in.plan()
                .cut()
                .operation(one.operation().id())
                .flatMap(cut -> Optional.ofNullable(cut.milling()).map(load -> judged(in, one, size, upOrDown(load))));
    }

    /** The largest force along the spindle over a turn, N. */
    private static double upOrDown(MillingLoad load) {
        return load.turn().stream()
                .mapToDouble(moment -> Math.abs(moment.force().axial()))
                .max()
                .orElse(0);
    }

    private Finding judged(Clamped in, Operations.In one, Size size, double force) {
        double half = (size.greatestMm() - size.leastMm()) / 2;
        Heights at = in.heights();
        Plank end = new Plank(at.depth(), at.finishedTop() - at.partBottom());
        double gives = Plank.deflection(
                force,
                overhang(in),
                in.plan().rows().material().elasticModulus().inside(),
                end);
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), one.operation().id(), "overhang", "part"),
                "Spring of the part beyond the jaws",
                Figure.atMost(half, gives, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, one, margin.figure()));
    }

    private static String message(Clamped in, Operations.In one, Figure figure) {
        Words words = new Words(in.plan());
        return "The part stands out " + words.length(overhang(in)) + " beyond the jaws and gives "
                + words.fine(figure.value()) + " under " + words.cutter(one.operation()) + " " + one.at()
                + "; the drawing allows " + words.fine(figure.limit())
                + " either way. Put a jack under the end, or take less.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return CutChanges.of(plan, caution).shallower();
    }
}

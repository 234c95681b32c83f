package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Proposal.Way;
import setwright.caution.Severity;
import setwright.geometry.Single;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Region;
import setwright.job.RouteEdits;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.plan.part.StrapPlace;

/** A strap lies on what is to be cut. One caution a set-up, at the first operation that finds one there. */
public final class ClampOnTheCut implements Check {
    private static final double SAME = 1e-3;

    /** Less of an overlap is rounding, mm². */
    private static final double NOTHING = 0.01;

    @Override
    public String slug() {
        return "clamp-on-the-cut";
    }

    /** A strap in the way of an operation. */
    private record Covered(Operations.In in, StrapPlace strap) {}

    @Override
    public List<Finding> look(Plan plan) {
        return Strapped.all(plan).stream()
                .map(in -> covered(in).findFirst().map(this::failing).orElse(Finding.HOLDS))
                .toList();
    }

    /** The names of the straps that lie on what an operation cuts. */
    static List<String> names(Operations.In operation) {
        return Strapped.of(operation.plan(), operation.setUp()).stream()
                .flatMap(in -> covered(in, operation))
                .map(covered -> covered.strap().name())
                .toList();
    }

    private static Stream<Covered> covered(Strapped in) {
        return in.operations().flatMap(operation -> covered(in, operation));
    }

    private static Stream<Covered> covered(Strapped in, Operations.In operation) {
        Optional<OperationStage> stage =
                in.plan().part().operation(operation.operation().id());
        return in.straps().stream()
                .filter(strap -> stage.filter(on -> under(in, strap, on)).isPresent())
                .map(strap -> new Covered(operation, strap));
    }

    private static boolean under(Strapped in, StrapPlace strap, OperationStage on) {
        Region over = in.body(strap)
                .map(body -> body.solid().shadow(strap.padHeight(), strap.padHeight() + 1))
                .orElse(Region.NONE);
        List<Single> taken = new ArrayList<>(on.after().cuts());
        taken.removeAll(on.before().cuts());
        return taken.stream()
                .filter(cut -> cut.zHigh() > strap.padHeight() - SAME && cut.zLow() < strap.nutTop())
                .anyMatch(cut -> overlap(cut, strap, over));
    }

    private static boolean overlap(Single cut, StrapPlace strap, Region over) {
        PlanBox box = cut.box().plan();
        PlanBox strapBox = over.box();
        boolean near = box.xLow() < strapBox.xHigh()
                && strapBox.xLow() < box.xHigh()
                && box.yLow() < strapBox.yHigh()
                && strapBox.yLow() < box.yHigh();
        return near && over.meet(region(cut, strap)).area() > NOTHING;
    }

    /** What it takes just under the pad. */
    private static Region region(Single cut, StrapPlace strap) {
        double height = Math.min(cut.zHigh(), strap.padHeight()) - SAME;
        return cut.core(height, height);
    }

    private Finding failing(Covered covered) {
        Operations.In in = covered.in();
        return Finding.fails(
                Caution.Place.worstAt(
                        in.setUp().id(),
                        in.operation().id(),
                        covered.strap().drawn().id(),
                        covered.strap().name()),
                slug(),
                Severity.STOP,
                "The " + covered.strap().name() + " lies on what " + in.cutter() + " cuts " + in.at()
                        + ". The cutter runs into it: bring the strap elsewhere, or move the straps between two cuts"
                        + " with the part held all the while.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> elsewhere = StrapChanges.of(plan, caution.setUp(), caution.subject())
                .map(changes -> Stream.of(changes.elsewhere(), changes.turned())
                        .flatMap(List::stream)
                        .toList())
                .orElse(List.of());
        return Stream.concat(clampedAnew(plan, caution).stream(), elsewhere.stream())
                .toList();
    }

    /** The operations that find a strap in their way, in a clamping of their own. */
    private static List<Proposal> clampedAnew(Plan plan, Caution caution) {
        List<Operations.In> covered = Strapped.all(plan).stream()
                .filter(in -> in.setUp().id().equals(caution.setUp()))
                .flatMap(in -> covered(in))
                .map(Covered::in)
                .toList();
        List<String> ids =
                covered.stream().map(in -> in.operation().id()).distinct().toList();
        boolean all = covered.stream()
                .findFirst()
                .filter(in -> in.setUp().operations().size() > ids.size())
                .isEmpty();
        if (all) {
            return List.of();
        }
        return List.of(new Proposal(
                Way.ORDER,
                "Take " + String.join(", ", ids) + " in a clamping of its own, with the clamps moved one at a time.",
                RouteEdits.clampedAnew(plan.drawnUp(), caution.setUp(), ids).job()));
    }
}

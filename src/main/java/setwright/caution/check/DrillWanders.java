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
import setwright.location.HoleErrors;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unit;

/** A drill that leaves its axis by more than the place of the hole bears, or starts without a spot. */
public final class DrillWanders implements Check {
    /** What drift may take of a position tolerance (common practice). */
    private static final double SHARE = 1.0 / 3;

    /** A drill goes unspotted into a hole of so many diameters (common practice). */
    private static final double UNSPOTTED = 3;

    @Override
    public String slug() {
        return "drill-wanders";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.DRILL)
                .forEach(in -> plan.part()
                        .operation(in.operation().id())
                        .ifPresent(stage -> Holes.of(in.operation(), plan.job())
                                .forEach(hole -> found.add(look(in, hole, stage.workTop() - stage.lowest())))));
        return found;
    }

    private Finding look(Operations.In in, Hole hole, double depth) {
        Typed<Length> position = hole.position();
        if (position == null || OffTolerance.says(in.plan(), hole.id())) {
            return unspotted(in, hole, depth);
        }
        double drift = HoleErrors.byDial().driftPerDepth() * depth;
        Margin margin = Margin.of(
                slug(),
                place(in, hole),
                "Drift of " + new Words(in.plan()).cutter(in.operation()),
                Figure.atMost(SHARE * position.inside(), drift, Unit.MM));
        if (margin.figure().holds()) {
            Finding without = unspotted(in, hole, depth);
            return without == Finding.HOLDS ? Finding.holds(margin) : without;
        }
        return Finding.fails(margin, Severity.CAUTION, drifts(in, hole, margin.figure()));
    }

    private static Caution.Place place(Operations.In in, Hole hole) {
        return Caution.Place.of(in.setUp().id(), in.operation().id(), hole.id(), Words.called(hole));
    }

    private static String drifts(Operations.In in, Hole hole, Figure figure) {
        Words words = new Words(in.plan());
        return words.cutter(in.operation()) + " wanders " + words.fine(figure.value()) + " by the bottom of "
                + Words.called(hole) + " " + in.at() + "; " + words.fine(figure.limit())
                + " is asked, a third of the position tolerance. Bore it, or take it undersize and bring it to place by"
                + " an end mill.";
    }

    private Finding unspotted(Operations.In in, Hole hole, double depth) {
        double diameter = in.plan()
                .rows()
                .cutter(in.operation().cutter().value())
                .map(cutter -> cutter.diameter().inside())
                .orElse(Double.POSITIVE_INFINITY);
        if (spotted(in, hole) || depth <= UNSPOTTED * diameter) {
            return Finding.HOLDS;
        }
        Words words = new Words(in.plan());
        return Finding.fails(
                place(in, hole),
                slug(),
                Severity.NOTE,
                words.cutter(in.operation()) + " goes " + words.length(depth) + " deep into " + Words.called(hole)
                        + " without a spot " + in.at() + ": take a spot drill first, or a stub drill.");
    }

    private static boolean spotted(Operations.In in, Hole hole) {
        return Operations.all(in.plan())
                .takeWhile(earlier ->
                        !earlier.operation().id().equals(in.operation().id()))
                .anyMatch(earlier -> earlier.operation().kind() == Operation.Kind.SPOT
                        && earlier.operation().features().contains(hole.id()));
    }
}

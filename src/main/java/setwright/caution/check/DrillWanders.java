package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import setwright.plan.cut.HoleEntry;
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
                .forEach(in -> look(plan, in, found));
        return found;
    }

    private void look(Plan plan, Operations.In in, List<Finding> found) {
        slanted(in).ifPresent(found::add);
        plan.part()
                .operation(in.operation().id())
                .ifPresent(stage -> Holes.of(in.operation(), plan.job())
                        .forEach(hole -> found.add(look(in, hole, stage.workTop() - stage.lowest()))));
    }

    /** A drill that starts on a slanted face, which nothing made flat or marked before. */
    private static Optional<Finding> slanted(Operations.In in) {
        return in.plan()
                .cut()
                .operation(in.operation().id())
                .flatMap(cut -> Optional.ofNullable(cut.hole()))
                .filter(work -> work.entry() == HoleEntry.SLANTED)
                .map(work -> Finding.fails(
                        in.place("slant"),
                        "drill-wanders",
                        Severity.CAUTION,
                        in.cutter() + " starts on a slanted face " + in.at()
                                + ". It slides down the slant and bends or breaks: plunge a flat with an end mill first,"
                                + " or spot it with a stiff spot drill."));
    }

    private Finding look(Operations.In in, Hole hole, double depth) {
        Typed<Length> position = hole.position();
        if (position == null || bored(in, hole) || OffTolerance.says(in.plan(), hole.id())) {
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

    /** Whether a drift of so much is too much for a position tolerance. */
    static boolean tooFar(double drift, double position) {
        return drift > SHARE * position;
    }

    /** A boring bar brings the hole back to its place. */
    private static boolean bored(Operations.In in, Hole hole) {
        return Operations.all(in.plan())
                .anyMatch(other -> other.operation().kind() == Operation.Kind.BORE
                        && other.operation().features().contains(hole.id()));
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

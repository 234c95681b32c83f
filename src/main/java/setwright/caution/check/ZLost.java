package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Severity;
import setwright.job.DrawnSetUp;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.Size;
import setwright.location.TouchOff;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.quantity.Unit;

/** One toleranced depth is cut by two tools, each touched off for itself. */
public final class ZLost implements Check {
    /** What the error of the touch-offs may take of a tolerance (common practice). */
    private static final double SHARE = 1.0 / 3;

    @Override
    public String slug() {
        return "z-lost";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            Operations.in(plan, setUp)
                    .filter(in -> in.operation().kind() == Operation.Kind.DRILL)
                    .filter(in -> facedBefore(setUp, in))
                    .forEach(in -> Holes.of(in.operation(), plan.job()).forEach(hole -> {
                        Size depth = hole.depth();
                        if (depth != null && depth.toleranced()) {
                            found.add(look(in, hole, depth));
                        }
                    }));
        }
        return found;
    }

    /** Whether another tool of the set-up cut the face that the depth is counted from. */
    private static boolean facedBefore(DrawnSetUp setUp, Operations.In in) {
        return setUp.operations().stream()
                .takeWhile(earlier -> !earlier.id().equals(in.operation().id()))
                .anyMatch(earlier -> earlier.kind() == Operation.Kind.FACE);
    }

    private Finding look(Operations.In in, Hole hole, Size depth) {
        double limit = SHARE * (depth.greatestMm() - depth.leastMm());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), in.operation().id(), hole.id(), Words.called(hole)),
                "Touching off twice for the depth of " + Words.called(hole),
                Figure.atMost(limit, TouchOff.error(2, TouchOff.EACH), Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, hole, margin.figure()));
    }

    private static String message(Operations.In in, Hole hole, Figure figure) {
        Words words = new Words(in.plan());
        return "The depth of " + Words.called(hole) + " hangs on two touch-offs, of the facing cutter and of "
                + words.cutter(in.operation()) + ", " + words.fine(figure.value()) + " together " + in.at() + "; "
                + words.fine(figure.limit())
                + " is asked, a third of its tolerance. Measure the depth first, take the last of it by what was measured.";
    }
}

package setwright.caution.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Side;
import setwright.job.DrawnSetUp;
import setwright.job.Hole;
import setwright.job.InWords;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.part.Holes;

/**
 * A hole is placed from an edge that is not yet cut: what comes off later shifts it. One caution a set-up: the order of the
 * set-ups is one cause.
 */
public final class HoldingFaceGone implements Check {
    @Override
    public String slug() {
        return "holding-face-gone";
    }

    /** A hole that is drilled from an edge, and the set-up that cuts the face there later. */
    private record Edge(Operations.In in, Hole hole, Side side, DrawnSetUp later) {
        boolean general() {
            return hole.position() == null;
        }
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        for (DrawnSetUp setUp : plan.drawnUp().setUps()) {
            List<Edge> gone = Operations.in(plan, setUp)
                    .filter(in -> in.operation().kind() == Operation.Kind.DRILL)
                    .flatMap(in -> Holes.of(in.operation(), plan.job()).flatMap(hole -> edges(in, hole)))
                    .sorted(Comparator.comparing(Edge::general))
                    .toList();
            found.add(gone.isEmpty() ? Finding.HOLDS : fails(gone));
        }
        return found;
    }

    private static Stream<Edge> edges(Operations.In in, Hole hole) {
        return sides(hole).stream()
                .flatMap(side -> cutLater(in, side).map(later -> new Edge(in, hole, side, later)).stream());
    }

    /** The sides of the part that a hole's place is counted from; none where it is counted from the middle. */
    private static List<Side> sides(Hole hole) {
        Side right = Side.facing(hole.side().u());
        Side high = Side.facing(hole.side().v());
        return switch (hole.place().from()) {
            case CENTRE -> List.of();
            case LEFT_LOW -> List.of(right.opposite(), high.opposite());
            case RIGHT_LOW -> List.of(right, high.opposite());
            case LEFT_HIGH -> List.of(right.opposite(), high);
            case RIGHT_HIGH -> List.of(right, high);
        };
    }

    private static Optional<DrawnSetUp> cutLater(Operations.In in, Side side) {
        List<DrawnSetUp> all = in.plan().drawnUp().setUps();
        return FaceStates.faces(in.plan(), side)
                .flatMap(face -> all.subList(all.indexOf(in.setUp()) + 1, all.size()).stream()
                        .filter(later -> FaceStates.cuts(later, face)))
                .findFirst();
    }

    /** What has a position tolerance does not bear it; what is general may be drilled with the allowance counted in. */
    private Finding fails(List<Edge> gone) {
        Edge worst = gone.get(0);
        String side = InWords.word(worst.side());
        String more = gone.size() == 1 ? "" : ", and " + (gone.size() - 1) + " more like it";
        return Finding.fails(
                Caution.Place.worstAt(
                        worst.in().setUp().id(), worst.in().operation().id(), "edges", side + " face"),
                slug(),
                worst.general() ? Severity.CAUTION : Severity.STOP,
                Words.sentence(Words.called(worst.hole())) + " is placed from the " + side + " face "
                        + worst.in().at() + ", which is cut later, in set-up "
                        + worst.later().id() + more
                        + ". The hole comes out by what is taken off: change the order, or count the allowance in.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<DrawnSetUp> all = plan.drawnUp().setUps();
        int at = all.indexOf(Operations.setUp(plan, caution.setUp()));
        return all.subList(at + 1, all.size()).stream()
                .map(later -> new OrderChanges(plan).setUpBefore(later.id(), caution.setUp()))
                .toList();
    }
}

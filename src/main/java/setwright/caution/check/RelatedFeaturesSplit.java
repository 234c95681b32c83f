package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.DrawnSetUp;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.location.HoleErrors;
import setwright.location.TwoLoadings;
import setwright.plan.Plan;
import setwright.plan.part.Holes;
import setwright.plan.place.Loading;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unit;

/** Holes of one side that stand in a tight relation are drilled in two loadings. */
public final class RelatedFeaturesSplit implements Check {
    /** What the error of two loadings may take of a position tolerance (common practice). */
    private static final double SHARE = 1.0 / 3;

    @Override
    public String slug() {
        return "related-features-split";
    }

    /** A hole with a position tolerance where it is drilled. */
    private record Placed(Operations.In in, Hole hole, double position) {}

    @Override
    public List<Finding> look(Plan plan) {
        List<Placed> all = placed(plan);
        List<Finding> found = new ArrayList<>();
        for (Placed one : all) {
            all.stream()
                    .takeWhile(earlier -> earlier != one)
                    .filter(earlier -> earlier.hole().side() == one.hole().side())
                    .filter(earlier ->
                            !earlier.in().setUp().id().equals(one.in().setUp().id()))
                    .findFirst()
                    .ifPresent(earlier -> found.add(look(earlier, one)));
        }
        return found;
    }

    private static List<Placed> placed(Plan plan) {
        List<Placed> all = new ArrayList<>();
        Operations.all(plan)
                .filter(in -> in.operation().kind() == Operation.Kind.DRILL)
                .forEach(in -> Holes.of(in.operation(), plan.job()).forEach(hole -> {
                    Typed<Length> position = hole.position();
                    if (position != null) {
                        all.add(new Placed(in, hole, position.inside()));
                    }
                }));
        return all;
    }

    private Finding look(Placed first, Placed second) {
        double limit = SHARE * Math.min(first.position(), second.position());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(
                        second.in().setUp().id(),
                        second.in().operation().id(),
                        first.hole().id() + "+" + second.hole().id(),
                        Words.called(second.hole())),
                "Two loadings between " + Words.called(first.hole()) + " and " + Words.called(second.hole()),
                Figure.atMost(limit, TwoLoadings.error(errors(first.in()), errors(second.in())), Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(first, second, margin.figure()));
    }

    /** By the way that this loading finds its zero and takes its part. */
    private static HoleErrors errors(Operations.In in) {
        return new Loading(in.setUp(), in.plan().rows()).hole(false);
    }

    private static String message(Placed first, Placed second, Figure figure) {
        Words words = new Words(second.in().plan());
        return Words.sentence(Words.called(second.hole())) + " " + second.in().at()
                + " is drilled in another loading than "
                + Words.called(first.hole()) + " " + first.in().at() + ", " + words.fine(figure.value())
                + " from it; " + words.fine(figure.limit())
                + " is asked, a third of the tighter position. Drill both in one loading, or change the datum to the first"
                + " hole.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        DrawnSetUp from = Operations.setUp(plan, caution.setUp());
        String first = caution.subject().substring(0, caution.subject().indexOf('+'));
        String second = caution.subject().substring(caution.subject().indexOf('+') + 1);
        return placed(plan).stream()
                .filter(one -> one.hole().id().equals(first))
                .flatMap(one -> new OrderChanges(plan).into(one.in().setUp(), from, List.of(second)).stream())
                .toList();
    }
}

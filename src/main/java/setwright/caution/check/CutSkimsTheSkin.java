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
import setwright.job.FaceState;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.quantity.Unit;

/** The first cut in a cast, rolled or flame cut face is too shallow: the edge runs in the hard skin and is gone. */
public final class CutSkimsTheSkin implements Check {
    /** How deep a first cut gets below the skin, mm (common practice: 1.5 to 2). */
    static final double ASKED = 1.5;

    private static final double USUAL = 2;
    private static final List<FaceState> SKIN = List.of(FaceState.CAST, FaceState.HOT_ROLLED, FaceState.FLAME_CUT);

    @Override
    public String slug() {
        return "cut-skims-the-skin";
    }

    @Override
    public List<Finding> look(Plan plan) {
        List<Finding> found = new ArrayList<>();
        Clamped.all(plan).forEach(in -> firstFacing(in).ifPresent(one -> found.add(look(in, one))));
        return found;
    }

    private static Optional<Operations.In> firstFacing(Clamped in) {
        boolean skin = SKIN.contains(
                FaceStates.before(in.plan(), in.setUp()).of(in.setUp().up().value()));
        return in.operations()
                .filter(one -> skin && one.operation().kind() == Operation.Kind.FACE)
                .findFirst();
    }

    private Finding look(Clamped in, Operations.In one) {
        double all = in.heights().startTop() - in.heights().finishedTop();
        double first = Math.min(all, one.operation().depth().value().inside());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.ofSetUp(in.setUp().id(), "skin", "skin"),
                "First cut below the skin",
                Figure.atLeast(ASKED, first, Unit.MM));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.CAUTION, message(in, one, first));
    }

    private static String message(Clamped in, Operations.In one, double first) {
        Words words = new Words(in.plan());
        return "The first cut of " + words.cutter(one.operation()) + " is " + words.length(first)
                + " deep in a face with its skin on " + in.at() + "; " + words.length(ASKED)
                + " is asked. The edge rubs in scale and sand and is gone: take the first cut below the skin, a third"
                + " slower than usual.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return Operations.all(plan)
                .filter(in -> in.setUp().id().equals(caution.setUp()))
                .filter(in -> in.operation().kind() == Operation.Kind.FACE)
                .limit(1)
                .map(in -> new CutChanges(plan, in.operation()).pass(USUAL))
                .toList();
    }
}

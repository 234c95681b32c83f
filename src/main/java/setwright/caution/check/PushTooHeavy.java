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
import setwright.cutting.LeverPush;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.quantity.Measure;
import setwright.quantity.Unit;

/** A drill that a hand cannot push: a note where it goes slower than planned, a caution where even half the feed is too much. */
public final class PushTooHeavy implements Check {
    @Override
    public String slug() {
        return "push-too-heavy";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(plan, slug(), PushTooHeavy::meant, this::look);
    }

    private static boolean meant(Operations.In in) {
        return in.operation().kind() == Operation.Kind.DRILL
                && in.operation().method().value().byLever();
    }

    private Finding look(Operations.In in, OperationCut cut) {
        double feed = cut.feedPerEdge().inside();
        double diameter = in.cutterRow().orElseThrow().diameter().inside();
        double factor = in.plan().rows().material().drillFactor().inside();
        double planned = LeverPush.planned(diameter, feed, before(in), factor);
        double slowest = LeverPush.slowest(diameter, feed, before(in), factor);
        Margin margin = Margin.of(
                slug(), in.place("lever"), "Push of " + in.cutter(), Figure.atMost(LeverPush.BY_HAND, slowest, Unit.N));
        if (!margin.figure().holds()) {
            return Finding.fails(margin, Severity.CAUTION, message(in, slowest, " even at half the feed"));
        }
        return planned > LeverPush.BY_HAND
                ? Finding.fails(margin, Severity.NOTE, message(in, planned, " at the feed of the plan"))
                : Finding.holds(margin);
    }

    /** The hole that is there before it, mm. */
    private static double before(Operations.In in) {
        return in.plan()
                .part()
                .operation(in.operation().id())
                .flatMap(OperationStage::holeBefore)
                .orElse(0.0);
    }

    private static String message(Operations.In in, double thrust, String when) {
        Words words = new Words(in.plan());
        return in.cutter() + " " + in.at() + " wants a push of " + words.of(Measure.FORCE, thrust) + when
                + "; a hand on the lever gives about " + words.of(Measure.FORCE, LeverPush.BY_HAND)
                + ". It rubs, and grabs as it breaks through: drill a pilot as wide as its web first.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        List<Proposal> all = new ArrayList<>(PilotHole.of(plan, caution).stream()
                .map(PilotHole::drilledFirst)
                .toList());
        all.add(CutChanges.of(plan, caution).method(Operation.Method.QUILL_POWER));
        return all;
    }
}

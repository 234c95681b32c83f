package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Unit;

/** A drill larger than the power feed of the quill may carry. */
public final class QuillFeedOverloaded implements Check {
    @Override
    public String slug() {
        return "quill-feed-overloaded";
    }

    @Override
    public List<Finding> look(Plan plan) {
        Typed<Length> largest = plan.rows().machine().quillFeedLargestDrill();
        return largest == null
                ? List.of()
                : Operations.inItsCut(plan, slug(), QuillFeedOverloaded::meant, (in, cut) -> look(in, largest));
    }

    private static boolean meant(Operations.In in) {
        return in.makesHoles() && in.operation().method().value() == Operation.Method.QUILL_POWER;
    }

    private Finding look(Operations.In in, Typed<Length> largest) {
        double diameter = in.cutterRow().orElseThrow().diameter().inside();
        Margin margin = Margin.of(
                slug(),
                in.place("quill-feed"),
                in.cutter() + " on the power feed",
                Figure.atMost(largest.inside(), diameter, Unit.MM));
        Words words = new Words(in.plan());
        String message = in.cutter() + " " + in.at() + " is fed by the quill, whose power feed carries "
                + words.length(largest.inside()) + " and not " + words.length(diameter)
                + ". Its clutch slips or its worm strips: take the lever, or drill a pilot first.";
        return margin.figure().holds() ? Finding.holds(margin) : Finding.fails(margin, Severity.CAUTION, message);
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return List.of(CutChanges.of(plan, caution).method(Operation.Method.QUILL_LEVER));
    }
}

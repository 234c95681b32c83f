package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;
import setwright.quantity.Unit;
import setwright.reach.QuillUse;

/** Milling with the quill run out: it is thinner than the head and bends. Holes are made by the quill and are not meant. */
public final class QuillFarOut implements Check {
    /** Quill out from which on it is a note, mm (common practice). */
    private static final double NOTED = 25;

    /** Quill out from which on it is a caution, mm (common practice). */
    private static final double FAR = 60;

    @Override
    public String slug() {
        return "quill-far-out";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.all(plan)
                .filter(in -> !in.makesHoles())
                .map(in -> plan.part()
                        .operation(in.operation().id())
                        .map(on -> look(in, on))
                        .orElseGet(() -> in.unlooked(slug(), Operations.FOR_ROOM)))
                .toList();
    }

    private Finding look(Operations.In in, OperationStage on) {
        double out =
                Math.max(0, QuillUse.out(in.operation().kneeHeight().value().inside(), on.projection(), on.lowest()));
        Margin margin =
                Margin.of(slug(), in.place("quill"), "Quill out for " + in.cutter(), Figure.atMost(FAR, out, Unit.MM));
        if (!margin.figure().holds()) {
            return Finding.fails(margin, Severity.CAUTION, message(in, out, FAR));
        }
        return out > NOTED ? Finding.fails(margin, Severity.NOTE, message(in, out, NOTED)) : Finding.holds(margin);
    }

    private static String message(Operations.In in, double out, double limit) {
        Words words = new Words(in.plan());
        return in.cutter() + " mills " + in.at() + " with the quill " + words.length(out) + " out; from "
                + words.length(limit) + " on it bends and rings. Bring the knee up and the quill in, and lock it.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return ToolChanges.of(plan, caution).kneeToPencil();
    }
}

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
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.room.OperationRoom;
import setwright.quantity.Unit;

/** The quill is out of stroke before the hole is done, at the knee height that the plan has. */
public final class QuillRunsOut implements Check {
    /** Heights are typed to a hundredth of a millimetre or a thousandth of an inch; less than this is their rounding, mm. */
    private static final double ROUNDING = 0.05;

    @Override
    public String slug() {
        return "quill-runs-out";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsRoom(plan, slug(), this::look);
    }

    private Finding look(Operations.In in, OperationRoom room) {
        double used = room.quillUsed().inside();
        double stroke = room.quillStroke();
        String cutter = new Words(in.plan()).cutter(in.operation());
        Margin margin = Margin.of(
                slug(),
                Caution.Place.of(in.setUp().id(), in.operation().id(), "quill", "quill"),
                "Quill out for " + cutter,
                Figure.atMost(stroke, used, Unit.MM));
        return used <= stroke + ROUNDING
                ? Finding.holds(margin)
                : Finding.fails(margin, Severity.STOP, message(in, used, stroke));
    }

    private static String message(Operations.In in, double used, double stroke) {
        Words words = new Words(in.plan());
        return words.cutter(in.operation()) + " " + in.at() + " wants " + words.length(used)
                + " of quill and the machine has " + words.length(stroke) + ": the hole ends "
                + words.length(used - stroke)
                + " short" + wayOut(in);
    }

    /** A drill goes on where it stopped; every other tool leaves a step or breaks. */
    private static String wayOut(Operations.In in) {
        return in.operation().kind() == Operation.Kind.DRILL
                ? ": bring the knee up first, or drill part way, quill back, knee up, lock, and on."
                : ", and a second bite leaves a step: bring the knee up first, or take a shorter way down.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.kneeToPencil());
        Figure figure = caution.figure();
        if (figure != null) {
            all.addAll(tool.longer(figure.value() - figure.limit()));
        }
        all.addAll(tool.inBites());
        all.addAll(tool.otherHolders());
        return all;
    }
}

package setwright.caution.check;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.holding.GripVerdict;
import setwright.plan.Plan;
import setwright.quantity.Unit;

/** The jaws hold next to nothing of the part. Where that already tips it, tipping is what is said. */
public final class GripTooShallow implements Check {
    /** More than this should be in the jaws, mm (common practice), or the whole of a thin part. */
    static final double ASKED = 3;

    private static final double SAME = 1e-6;

    @Override
    public String slug() {
        return "grip-too-shallow";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream().map(this::look).toList();
    }

    private Finding look(Clamped in) {
        Margin margin = Margin.of(
                slug(),
                in.place("grip-depth", "grip"),
                "Depth of the part in the jaws",
                Figure.atLeast(ASKED, in.heights().gripDepth(), Unit.MM));
        double whole = in.heights().startTop() - in.heights().partBottom();
        if (in.heights().gripDepth() > ASKED || in.heights().gripDepth() > whole - SAME) {
            return Finding.holds(margin);
        }
        return tips(in) ? Finding.HOLDS : Finding.fails(margin, Severity.CAUTION, message(in));
    }

    private static boolean tips(Clamped in) {
        return in.plan().hold().operations().stream()
                .filter(hold ->
                        hold.setUp().equals(in.setUp().id()) && hold.motion().equals("tips"))
                .anyMatch(hold -> GripMargin.of(hold).verdict() != GripVerdict.HOLDS);
    }

    private static String message(Clamped in) {
        Words words = new Words(in.plan());
        return "The jaws of the " + in.vise().name() + " hold "
                + words.length(Math.max(0, in.heights().gripDepth())) + " of the part " + in.at() + "; "
                + words.length(ASKED)
                + " is asked. Work that is held by its edge rises and rolls out: take lower parallels.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return new PackingChanges(plan, caution.setUp()).lower();
    }
}

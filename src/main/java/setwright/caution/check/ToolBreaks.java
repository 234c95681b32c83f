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
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.ThinTool;
import setwright.quantity.Band;
import setwright.quantity.Unit;

/** A cutter bent or a drill pushed beyond what it bears. */
public final class ToolBreaks implements Check {
    /** A feed that takes more than 40 % of a drill's push away. */
    private static final double HALF = 0.5;

    /** Of the expected strength, what is left on a bad day (from memory). */
    private static final double AT_WORST = 0.7;

    @Override
    public String slug() {
        return "tool-breaks";
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(plan, slug(), ToolBreaks::meant, this::look);
    }

    private static boolean meant(Operations.In in) {
        return switch (in.operation().kind()) {
            case SPOT, BORE, REAM, COUNTERBORE, SPOTFACE, COUNTERSINK -> false;
            default -> true;
        };
    }

    /** The same share that the plan counts among the limits of the cut. */
    private Finding look(Operations.In in, OperationCut cut) {
        return cut.limits().stream()
                .filter(limit -> limit.name() == LimitName.TOOL_BREAKAGE)
                .map(Limit::used)
                .filter(share -> share > 0)
                .map(share -> judged(in, cut, 1 / share))
                .findFirst()
                .orElse(Finding.HOLDS);
    }

    /** @param factor of strength over load */
    private Finding judged(Operations.In in, OperationCut cut, double factor) {
        Margin margin = Margin.of(
                        slug(),
                        in.place("tool"),
                        "Strength of " + in.cutter(),
                        Figure.atLeast(1 / AT_WORST, factor, Unit.NONE))
                .between(new Band(AT_WORST * factor, factor, factor));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, factor < 1 ? Severity.STOP : Severity.CAUTION, message(in, cut, factor));
    }

    private static String message(Operations.In in, OperationCut cut, double factor) {
        Words words = new Words(in.plan());
        return in.cutter() + " bears " + words.printing().factor(factor) + " times the cut " + in.at() + "; "
                + words.printing().factor(1 / AT_WORST) + " times is asked. " + how(in, cut);
    }

    private static String how(Operations.In in, OperationCut cut) {
        if (!in.makesHoles()) {
            return "It breaks at its holder and is thrown: less stick-out, or take less depth or feed.";
        }
        return buckles(in, cut)
                ? "It buckles at its holder and is thrown: less stick-out, or take less depth or feed."
                : "It twists off and its stump stays in the hole: drill larger or in two sizes, feed less, clear its"
                        + " chips, or take a sharper one.";
    }

    private static boolean buckles(Operations.In in, OperationCut cut) {
        double thrust = cut.thrust() == null ? 0 : cut.thrust().inside();
        return ThinTool.of(
                        in.cutterRow().orElseThrow(),
                        in.operation().stickOut().value().inside())
                .filter(rod -> rod.buckling(thrust) > rod.twisting(cut.torque().inside()))
                .isPresent();
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.asShortAsItHolds());
        all.addAll(cut.shallower());
        all.addAll(cut.speedAndFeedToPencil());
        all.add(cut.fed(HALF));
        all.addAll(tool.otherHolders());
        return all;
    }
}

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
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.job.Operation;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Band;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.rigidity.Rod;
import setwright.rigidity.ToolMaterials;
import setwright.shop.Cutter;

/** A cutter bent or a drill pushed beyond what it bears. */
public final class ToolBreaks implements Check {
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
        return !in.makesHoles() || in.operation().kind() == Operation.Kind.DRILL;
    }

    private Finding look(Operations.In in, OperationCut cut) {
        Optional<Double> used = in.makesHoles() ? buckling(in, cut) : bending(cut);
        return used.filter(share -> share > 0)
                .map(share -> judged(in, 1 / share))
                .orElse(Finding.HOLDS);
    }

    /** Stress of the largest side force over the strength; the same that the plan counts among the limits of the cut. */
    private static Optional<Double> bending(OperationCut cut) {
        return cut.limits().stream()
                .filter(limit -> limit.name() == LimitName.TOOL_BREAKAGE)
                .map(Limit::used)
                .findFirst();
    }

    /** Push over what a rod of the drill's length bears, its point led by the spot or the hole. */
    private static Optional<Double> buckling(Operations.In in, OperationCut cut) {
        Value thrust = cut.thrust();
        if (thrust == null) {
            return Optional.empty();
        }
        Cutter drill = in.cutterRow().orElseThrow();
        double bears = Rod.buckling(
                Rod.Ends.FIXED_PINNED.factor(),
                ToolMaterials.modulus(drill.material()).expected(),
                drill.diameter().inside(),
                in.operation().stickOut().value().inside());
        return Optional.of(thrust.inside() / bears);
    }

    /** @param factor of strength over load */
    private Finding judged(Operations.In in, double factor) {
        Margin margin = Margin.of(
                        slug(),
                        in.place("tool"),
                        "Strength of " + in.cutter(),
                        Figure.atLeast(1 / AT_WORST, factor, Unit.NONE))
                .between(new Band(AT_WORST * factor, factor, factor));
        return margin.figure().holds()
                ? Finding.holds(margin)
                : Finding.fails(margin, factor < 1 ? Severity.STOP : Severity.CAUTION, message(in, factor));
    }

    private static String message(Operations.In in, double factor) {
        Words words = new Words(in.plan());
        String how = in.makesHoles() ? " buckles" : " breaks";
        return in.cutter() + " bears " + words.printing().factor(factor) + " times the cut "
                + in.at() + "; " + words.printing().factor(1 / AT_WORST) + " times is asked. It" + how
                + " at its holder and is thrown: less stick-out, or take less depth or feed.";
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(tool.asShortAsItHolds());
        all.addAll(cut.shallower());
        all.addAll(cut.speedAndFeedToPencil());
        all.addAll(tool.otherHolders());
        return all;
    }
}

package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Finding;
import setwright.caution.Proposal;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.Stability;
import setwright.shop.Cutter;

/** A pass that rings: by lobes where few waves fit between two teeth or the tool was measured, else by its stick-out. */
public final class ChatterLikely implements Check {
    static final String SLUG = "chatter-likely";

    @Override
    public String slug() {
        return SLUG;
    }

    @Override
    public List<Finding> look(Plan plan) {
        return Operations.inItsCut(plan, SLUG, in -> !in.makesHoles() && judged(in), ChatterLikely::look);
    }

    /** A stout cutter is only judged where its lobes can be told. */
    private static boolean judged(Operations.In in) {
        return endMill(in) || predictable(in);
    }

    private static boolean endMill(Operations.In in) {
        return in.cutterRow()
                .map(Cutter::form)
                .filter(Cutter.Form.END_MILL::equals)
                .isPresent();
    }

    private static boolean predictable(Operations.In in) {
        return in.plan()
                .cut()
                .operation(in.operation().id())
                .map(OperationCut::stability)
                .filter(Stability::predictable)
                .isPresent();
    }

    private static Finding look(Operations.In in, OperationCut cut) {
        Stability stability = cut.stability();
        return stability != null && stability.predictable()
                ? new RingingPass(in, cut, stability).look()
                : new SlenderTool(in, cut).look();
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        ToolChanges tool = ToolChanges.of(plan, caution);
        CutChanges cut = CutChanges.of(plan, caution);
        List<Proposal> all = new ArrayList<>(cut.quietSpeed());
        all.addAll(tool.asShortAsItHolds());
        all.addAll(cut.quietDepth());
        all.addAll(cut.shallower());
        all.addAll(tool.otherHolders());
        all.addAll(tool.cutterToPencil());
        return all;
    }
}

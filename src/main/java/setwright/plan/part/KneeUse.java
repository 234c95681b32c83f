package setwright.plan.part;

import setwright.job.Operation;
import setwright.reach.HeightsOfUse;
import setwright.reach.NoseRange;
import setwright.shop.Machine;

/** What an operation asks of knee and quill. */
public final class KneeUse {
    private KneeUse() {}

    public static NoseRange range(Machine machine) {
        return new NoseRange(
                machine.noseLow().inside(),
                machine.noseHigh().inside(),
                machine.quillStroke().inside());
    }

    /** Milling is set by the knee with the quill in; holes are made by the quill in one stroke. */
    public static HeightsOfUse of(String operation, Operation.Kind kind, ToolHeights heights) {
        double lowest = Math.min(heights.lowest(), heights.crossing());
        return kind.inHole()
                ? HeightsOfUse.byQuill(operation, heights.projection(), heights.crossing(), lowest)
                : HeightsOfUse.byKnee(operation, heights.projection(), heights.crossing(), lowest);
    }
}

package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import setwright.plan.NotChecked;

/** What cutting asks of tool, spindle and machine, operation by operation. */
public record CutPlan(List<OperationCut> operations, List<NotChecked> notChecked) {
    public CutPlan {
        operations = List.copyOf(operations);
        notChecked = List.copyOf(notChecked);
    }

    /**
     * The same with the ringing of narrow and quick cuts followed tooth by tooth: the second stage, in the background. What
     * an earlier plan found for the same cut stays.
     */
    public CutPlan settled(Optional<CutPlan> before) {
        List<OperationCut> settled =
                operations.stream().map(cut -> settled(cut, before)).toList();
        return settled.equals(operations) ? this : new CutPlan(settled, notChecked);
    }

    private static OperationCut settled(OperationCut cut, Optional<CutPlan> before) {
        Stability quick = cut.stability();
        if (quick == null || !Stabilities.unsettled(quick)) {
            return cut;
        }
        return cut.ringing(before.flatMap(plan -> plan.operation(cut.operation()))
                .map(OperationCut::stability)
                .filter(known ->
                        known.way() == Stability.Way.STEPPED && known.question().equals(quick.question()))
                .filter(known -> known.waves().equals(quick.waves()))
                .orElseGet(() -> Stabilities.stepped(quick)));
    }

    public Optional<OperationCut> operation(String id) {
        return operations.stream().filter(cut -> cut.operation().equals(id)).findFirst();
    }
}

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

    public Optional<OperationCut> operation(String id) {
        return operations.stream().filter(cut -> cut.operation().equals(id)).findFirst();
    }
}

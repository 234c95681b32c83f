package setwright.plan.hold;

import java.util.List;
import java.util.Optional;
import setwright.plan.NotChecked;

/** The grip against every operation. */
public record HoldPlan(List<OperationHold> operations, List<NotChecked> notChecked) {
    public HoldPlan {
        operations = List.copyOf(operations);
        notChecked = List.copyOf(notChecked);
    }

    public Optional<OperationHold> operation(String id) {
        return operations.stream().filter(hold -> hold.operation().equals(id)).findFirst();
    }

    /** The operation of a set-up that is held least, by its expected factor. */
    public Optional<OperationHold> weakest(String setUp) {
        return operations.stream()
                .filter(hold -> hold.setUp().equals(setUp))
                .min(java.util.Comparator.comparingDouble(hold -> hold.factor().expected()));
    }
}

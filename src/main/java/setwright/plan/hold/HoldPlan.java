package setwright.plan.hold;

import java.util.List;
import java.util.Optional;
import setwright.plan.Kept;
import setwright.plan.NotChecked;

/**
 * The grip against every operation.
 *
 * @param operations how well the part is held in its device
 * @param kept what was asked here, for the plan after this one
 * @param devices how well the device is held on the table, for the same operations
 */
public record HoldPlan(
        List<OperationHold> operations,
        List<OperationHold> devices,
        List<NotChecked> notChecked,
        Kept<HoldQuestion, HoldAnswer> kept) {
    public HoldPlan {
        operations = List.copyOf(operations);
        devices = List.copyOf(devices);
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

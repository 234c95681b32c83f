package setwright.plan.time;

import java.util.List;
import java.util.Optional;
import setwright.plan.NotChecked;

/**
 * Times in seconds.
 *
 * @param setUp once for the job: bolting, clocking, edges, first touch-offs
 * @param each a part: loading, cutting, changing tools, measuring
 * @param batch all parts with the set-up, one part complete after the other
 */
public record TimePlan(
        List<OperationTime> operations, double setUp, double each, double batch, List<NotChecked> notChecked) {
    public TimePlan {
        operations = List.copyOf(operations);
        notChecked = List.copyOf(notChecked);
    }

    public Optional<OperationTime> operation(String id) {
        return operations.stream().filter(time -> time.operation().equals(id)).findFirst();
    }

    /** What one operation takes on one part: in the cut, and by hand around it. */
    public record OperationTime(String setUp, String operation, double cutting, double handling) {
        public double whole() {
            return cutting + handling;
        }
    }
}

package setwright.plan.time;

import java.util.List;
import java.util.Optional;
import setwright.batch.Batch;
import setwright.plan.NotChecked;

/**
 * Times in seconds.
 *
 * @param setUps each set-up as the orders of working the batch see it
 * @param setUp once for the job: bolting, clocking, edges, first touch-offs
 * @param each a part: loading, cutting, changing tools, measuring
 * @param batch all parts with the set-up, one part complete after the other
 */
public record TimePlan(
        List<OperationTime> operations,
        List<Batch> setUps,
        double setUp,
        double each,
        double batch,
        List<NotChecked> notChecked) {
    public TimePlan {
        operations = List.copyOf(operations);
        setUps = List.copyOf(setUps);
        notChecked = List.copyOf(notChecked);
    }

    public Optional<OperationTime> operation(String id) {
        return operations.stream().filter(time -> time.operation().equals(id)).findFirst();
    }

    /**
     * What one operation takes on one part: in the cut, and by hand around it.
     *
     * @param change of the tool and the speed; part of the handling
     */
    public record OperationTime(String setUp, String operation, double cutting, double handling, double change) {
        public double whole() {
            return cutting + handling;
        }
    }
}

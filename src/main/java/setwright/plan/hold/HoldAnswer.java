package setwright.plan.hold;

import java.util.List;
import java.util.Optional;

/** How an operation is borne: by the part's grip in its device, and by every joint between the device and the table. */
public record HoldAnswer(Optional<OperationHold> part, List<OperationHold> devices) {
    public HoldAnswer {
        devices = List.copyOf(devices);
    }
}

package setwright.plan.hold;

import java.util.Optional;

/** How an operation is borne: by the part's grip in its device, and by the device's on the table. */
public record HoldAnswer(Optional<OperationHold> part, Optional<OperationHold> device) {}

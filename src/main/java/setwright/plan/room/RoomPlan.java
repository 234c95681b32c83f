package setwright.plan.room;

import java.util.List;
import java.util.Optional;
import setwright.plan.Kept;
import setwright.plan.NotChecked;

/**
 * Heights, knee, quill and clearances of every set-up.
 *
 * @param kept what was asked here, for the plan after this one
 */
public record RoomPlan(List<SetUpRoom> setUps, List<NotChecked> notChecked, Kept<RoomQuestion, OperationRoom> kept) {
    public RoomPlan {
        setUps = List.copyOf(setUps);
        notChecked = List.copyOf(notChecked);
    }

    public Optional<SetUpRoom> setUp(String id) {
        return setUps.stream().filter(room -> room.setUp().equals(id)).findFirst();
    }

    public Optional<OperationRoom> operation(String id) {
        return setUps.stream()
                .flatMap(room -> room.operations().stream())
                .filter(room -> room.operation().equals(id))
                .findFirst();
    }
}

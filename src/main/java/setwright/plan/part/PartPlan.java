package setwright.plan.part;

import java.util.List;
import java.util.Optional;
import setwright.plan.NotChecked;

/** The part through all its set-ups. */
public record PartPlan(List<SetUpStage> setUps, List<NotChecked> notChecked) {
    public PartPlan {
        setUps = List.copyOf(setUps);
        notChecked = List.copyOf(notChecked);
    }

    public Optional<SetUpStage> setUp(String id) {
        return setUps.stream().filter(stage -> stage.setUp().equals(id)).findFirst();
    }

    public Optional<OperationStage> operation(String id) {
        return setUps.stream()
                .flatMap(stage -> stage.operations().stream())
                .filter(stage -> stage.operation().equals(id))
                .findFirst();
    }
}

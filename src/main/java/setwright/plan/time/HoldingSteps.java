package setwright.plan.time;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;

/** What hands do for a holding: once for the set-up, and for every part. */
final class HoldingSteps {
    private HoldingSteps() {}

    /** Once: the device bolted down and clocked where it is not standing, stops set, the first part strapped. */
    static List<HandStep> once(DrawnHolding holding, boolean standing) {
        List<HandStep> steps = new ArrayList<>();
        if (!standing && holding.kind() != DrawnHolding.Kind.TABLE) {
            steps.add(HandStep.MOUNT_VISE);
            steps.add(HandStep.INDICATE_JAW);
        }
        if (stopped(holding)) {
            steps.add(HandStep.SET_STOP);
        }
        if (strapped(holding)) {
            steps.add(HandStep.STRAP_FIRST_PART);
        }
        return steps;
    }

    /** Putting a part in and taking it out. */
    static HandStep load(DrawnHolding holding) {
        if (strapped(holding)) {
            return HandStep.LOAD_UNDER_STRAPS;
        }
        return softJaws(holding) ? HandStep.LOAD_IN_SOFT_JAWS : HandStep.LOAD_IN_VISE;
    }

    private static boolean strapped(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> false;
            case TABLE -> true;
            case DEVICE -> !((DrawnDevice) holding).straps().isEmpty();
        };
    }

    private static boolean stopped(DrawnHolding holding) {
        return switch (holding.kind()) {
            case VISE -> !((DrawnVise) holding).stops().isEmpty();
            case TABLE -> !((DrawnTable) holding).stops().isEmpty();
            case DEVICE -> !((DrawnDevice) holding).stops().isEmpty();
        };
    }

    private static boolean softJaws(DrawnHolding holding) {
        return holding.kind() == DrawnHolding.Kind.VISE && ((DrawnVise) holding).jaws() != null;
    }
}

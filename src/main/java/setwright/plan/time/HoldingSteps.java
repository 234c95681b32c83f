package setwright.plan.time;

import java.util.ArrayList;
import java.util.List;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnTable;
import setwright.job.DrawnVise;
import setwright.job.ViseHolding;

/** What hands do for a holding: once for the set-up, and for every part. */
final class HoldingSteps {
    private HoldingSteps() {}

    /** Once: the device bolted down and clocked where it is not standing, stops set, the first part strapped. */
    static List<HandStep> once(DrawnHolding holding, boolean standing) {
        List<HandStep> steps = new ArrayList<>();
        if (!standing && holding.kind() != DrawnHolding.Kind.TABLE) {
            for (int vise = 0; vise < vises(holding); vise++) {
                steps.add(HandStep.MOUNT_VISE);
                steps.add(HandStep.INDICATE_JAW);
            }
        }
        if (jawsCut(holding)) {
            steps.add(HandStep.CUT_SOFT_JAWS);
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
        if (holding.kind() == DrawnHolding.Kind.DEVICE) {
            return load((DrawnDevice) holding);
        }
        return softJaws(holding) ? HandStep.LOAD_IN_SOFT_JAWS : HandStep.LOAD_IN_VISE;
    }

    private static HandStep load(DrawnDevice device) {
        return switch (device.fastening().value()) {
            case TAPE, GLUE -> HandStep.LOAD_STUCK;
            case SANDWICH -> HandStep.LOAD_IN_SANDWICH;
            case CHUCK, MANDREL, BETWEEN_CENTRES -> HandStep.LOAD_IN_CHUCK;
            case BOLTS -> HandStep.LOAD_UNDER_STRAPS;
            case STRAPS, COLLET, MAGNET -> HandStep.LOAD_IN_VISE;
        };
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
        return holding.kind() == DrawnHolding.Kind.VISE && ((DrawnVise) holding).otherJaws();
    }

    private static int vises(DrawnHolding holding) {
        return holding.kind() == DrawnHolding.Kind.VISE
                ? Math.max(1, ((DrawnVise) holding).vises().value())
                : 1;
    }

    private static boolean jawsCut(DrawnHolding holding) {
        return holding.kind() == DrawnHolding.Kind.VISE
                && ((DrawnVise) holding).jawCut().value() != ViseHolding.JawCut.UNCUT;
    }
}

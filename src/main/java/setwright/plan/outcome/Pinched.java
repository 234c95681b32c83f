package setwright.plan.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.geometry.Single;
import setwright.geometry.plane.PlanBox;
import setwright.job.DrawnHolding;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.HoldingEdits;
import setwright.job.Operation;
import setwright.plan.Rows;
import setwright.plan.part.Heights;
import setwright.plan.part.OperationStage;
import setwright.plan.part.PartPlan;
import setwright.plan.part.SetUpStage;
import setwright.plan.part.StrapPlace;

/**
 * A kerf that what holds the part presses together on the saw.
 *
 * @param clamp in words
 * @param over how far its nose reaches over the kerf, or how far the jaws stand over it, mm
 */
public record Pinched(String setUp, String operation, String clamp, double over) {
    public static List<Pinched> of(DrawnUp drawnUp, Rows rows, PartPlan part) {
        List<Pinched> found = new ArrayList<>();
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            part.setUp(setUp.id())
                    .ifPresent(stage -> setUp.operations().stream()
                            .filter(operation -> operation.kind() == Operation.Kind.SAW)
                            .flatMap(operation -> look(setUp, operation, stage, rows).stream())
                            .forEach(found::add));
        }
        return List.copyOf(found);
    }

    private static Optional<Pinched> look(DrawnSetUp setUp, DrawnOperation operation, SetUpStage stage, Rows rows) {
        return stage.operations().stream()
                .filter(one -> one.operation().equals(operation.id()))
                .findFirst()
                .flatMap(on -> kerfs(on).stream()
                        .flatMap(kerf -> clamp(setUp, operation, stage, rows, kerf).stream())
                        .findFirst());
    }

    private static List<Single> kerfs(OperationStage on) {
        List<Single> cuts = on.after().cuts();
        return cuts.subList(Math.min(cuts.size(), on.before().cuts().size()), cuts.size());
    }

    /** A strap over the kerf closes it; jaws that grip over and under it do not let it open. */
    private static Optional<Pinched> clamp(
            DrawnSetUp setUp, DrawnOperation operation, SetUpStage stage, Rows rows, Single kerf) {
        Heights heights = stage.heights();
        if (setUp.holding().kind() == DrawnHolding.Kind.VISE) {
            double over = heights.jawTop() - kerf.zHigh();
            boolean under = kerf.zLow() > heights.partBottom();
            return over > 0 && under
                    ? Optional.of(new Pinched(setUp.id(), operation.id(), "the vise", over))
                    : Optional.empty();
        }
        PlanBox mouth = kerf.box().plan();
        return StrapPlace.all(HoldingEdits.straps(setUp.holding()), heights, rows).stream()
                .filter(strap -> over(mouth, strap) > 0)
                .findFirst()
                .map(strap -> new Pinched(setUp.id(), operation.id(), "the " + strap.name(), over(mouth, strap)));
    }

    /** How far the nose of a strap reaches over the kerf. */
    private static double over(PlanBox kerf, StrapPlace strap) {
        return StrapPlace.NOSE - kerf.gap(PlanBox.of(strap.pad(), strap.pad()));
    }
}

package setwright.plan.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
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
 * A piece that an operation cuts free and that nothing holds.
 *
 * @param waste whether the part itself stays held
 */
public record Loose(String setUp, String operation, Piece piece, boolean waste) {
    /** A jaw counts as touching within so much, mm. */
    private static final double AT_JAW = 0.5;

    /** The first piece that each operation frees. */
    public static List<Loose> of(DrawnUp drawnUp, Rows rows, PartPlan part) {
        List<Loose> found = new ArrayList<>();
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            part.setUp(setUp.id())
                    .ifPresent(stage -> setUp.operations().stream()
                            .filter(Loose::mayFree)
                            .flatMap(operation -> freed(setUp, operation, stage, rows).stream())
                            .forEach(found::add));
        }
        return List.copyOf(found);
    }

    private static boolean mayFree(DrawnOperation operation) {
        return switch (operation.kind()) {
            case PROFILE, SLOT, SAW, POCKET, STEP -> true;
            default -> false;
        };
    }

    private static Optional<Loose> freed(DrawnSetUp setUp, DrawnOperation operation, SetUpStage stage, Rows rows) {
        Optional<OperationStage> on = stage.operations().stream()
                .filter(one -> one.operation().equals(operation.id()))
                .findFirst();
        if (on.isEmpty() || !through(operation, on.get(), stage.heights())) {
            return Optional.empty();
        }
        List<Piece> after = Pieces.of(on.get().after());
        if (after.size() < 2 || after.size() <= Pieces.of(on.get().before()).size()) {
            return Optional.empty();
        }
        Grip grip = new Grip(setUp.holding(), stage.heights(), rows);
        boolean partHeld = grip.holds(after.get(0));
        return after.stream()
                .filter(piece -> !grip.holds(piece))
                .filter(piece ->
                        partHeld || piece != after.get(0) || after.stream().anyMatch(grip::holds))
                .findFirst()
                .map(piece -> new Loose(setUp.id(), operation.id(), piece, piece != after.get(0)));
    }

    /** What does not come out below leaves all in one piece, but for a kerf, which lies level. */
    private static boolean through(DrawnOperation operation, OperationStage on, Heights heights) {
        return operation.kind() == Operation.Kind.SAW || on.lowest() <= heights.partBottom() + 1e-6;
    }

    /** What a holding holds of a part in pieces. */
    private record Grip(DrawnHolding holding, Heights heights, Rows rows) {
        boolean holds(Piece piece) {
            return switch (holding.kind()) {
                case VISE ->
                    piece.spans(
                            heights.front() + AT_JAW, heights.back() - AT_JAW, heights.partBottom(), heights.jawTop());
                case TABLE -> strapped(piece);
                case DEVICE ->
                    ((DrawnDevice) holding).on() == DeviceHolding.On.MAGNETIC_CHUCK
                            ? piece.box().zLow() <= heights.partBottom() + AT_JAW
                            : strapped(piece);
            };
        }

        private boolean strapped(Piece piece) {
            return StrapPlace.all(HoldingEdits.straps(holding), heights, rows).stream()
                    .anyMatch(strap -> piece.under(strap.pad()));
        }
    }
}

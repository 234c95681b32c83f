package setwright.plan.room;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.plan.Kept;
import setwright.plan.NotChecked;
import setwright.plan.Rows;
import setwright.plan.part.OperationStage;
import setwright.plan.part.PartPlan;
import setwright.plan.part.SetUpStage;

/** Works out the room of every set-up and operation. */
public final class Rooms {
    private Rooms() {}

    /** @param kept answers of the plan before this one, where it was made with the same rows */
    public static RoomPlan of(DrawnUp drawnUp, Rows rows, PartPlan part, Kept<RoomQuestion, OperationRoom> kept) {
        List<SetUpRoom> found = new ArrayList<>();
        List<NotChecked> missing = new ArrayList<>();
        Kept.Round<RoomQuestion, OperationRoom> round = kept.round();
        for (DrawnSetUp setUp : drawnUp.setUps()) {
            part.setUp(setUp.id()).ifPresent(stage -> found.add(setUp(setUp, stage, rows, round)));
        }
        return new RoomPlan(found, missing, round.kept());
    }

    private static SetUpRoom setUp(
            DrawnSetUp setUp, SetUpStage stage, Rows rows, Kept.Round<RoomQuestion, OperationRoom> round) {
        List<OperationRoom> operations = new ArrayList<>();
        Optional<Earlier> earlier = Optional.empty();
        for (OperationStage on : stage.operations()) {
            Optional<DrawnOperation> found = setUp.operation(on.operation());
            if (found.isPresent()) {
                DrawnOperation drawn = found.get();
                RoomQuestion question =
                        new RoomQuestion(setUp.id(), drawn, earlier, stage.heights(), stage.fixtures(), on);
                operations.add(round.answer(drawn.id(), question, asked -> asked.answer(rows)));
                earlier = Optional.of(Earlier.of(drawn, on));
            }
        }
        return new SetUpRoom(
                setUp.id(),
                Levels.of(setUp.holding(), stage.heights()),
                knees(operations),
                touchOffs(setUp),
                movedZeros(setUp),
                operations);
    }

    private static List<Double> knees(List<OperationRoom> operations) {
        Set<Double> heights = new LinkedHashSet<>();
        operations.forEach(operation -> heights.add(operation.kneeHeight()));
        return heights.stream().sorted().toList();
    }

    /** Every tool that goes in anew is touched off once. */
    private static int touchOffs(DrawnSetUp setUp) {
        int count = 0;
        String before = "";
        for (DrawnOperation operation : setUp.operations()) {
            count += operation.cutter().value().equals(before) ? 0 : 1;
            before = operation.cutter().value();
        }
        return count;
    }

    /** How often a tool that was touched off at one knee height goes on at another: its zero moves by the knee's dial. */
    private static int movedZeros(DrawnSetUp setUp) {
        List<DrawnOperation> all = setUp.operations();
        int count = 0;
        for (int i = 1; i < all.size(); i++) {
            count += movesZero(all.get(i - 1), all.get(i)) ? 1 : 0;
        }
        return count;
    }

    private static boolean movesZero(DrawnOperation before, DrawnOperation next) {
        return before.kind().inHole()
                && next.kind().inHole()
                && before.cutter().value().equals(next.cutter().value())
                && height(before) != height(next);
    }

    private static double height(DrawnOperation operation) {
        return operation.kneeHeight().value().inside();
    }
}

package setwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.drawing.HoleNumbers;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.Pattern;
import setwright.location.BoltCircle;
import setwright.plan.part.Holes;
import setwright.plan.part.OperationStage;
import setwright.plan.part.SetUpStage;

/** What a position list is checked and found again by: chords of circles, their middles as second zeros, a true hole. */
record CircleWords(Shown shown, DrawnSetUp setUp, SetUpStage stage, Positions positions) {
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (OperationStage on : stage.operations()) {
            setUp.operation(on.operation())
                    .filter(operation -> operation.kind() == Operation.Kind.DRILL)
                    .ifPresent(operation -> circle(operation, on).ifPresent(lines::add));
        }
        lines.add(lost());
        return lines;
    }

    /** A circle whose holes all stand in one operation of its own. */
    private Optional<String> circle(DrawnOperation operation, OperationStage on) {
        List<Hole> holes = Holes.of(operation, shown.plan().job()).toList();
        if (holes.size() != 1
                || holes.get(0).place().kind() != Pattern.Kind.BOLT_CIRCLE
                || on.spots().size() < 3) {
            return Optional.empty();
        }
        Pattern.BoltCircle circle = (Pattern.BoltCircle) holes.get(0).place();
        double chord = BoltCircle.chord(circle.diameter().inside(), circle.count());
        HoleNumbers numbers = HoleNumbers.of(stage);
        return Optional.of("Second zero, the middle of " + called(holes.get(0)) + ": "
                + positions.both(middle(on.spots())) + " from the first. Check: hole "
                + numbers.at(on.spots().get(0)) + " to its neighbour " + shown.length(chord)
                + " from middle to middle; the last to the first the same.");
    }

    private static String called(Hole hole) {
        return hole.note().isEmpty() ? hole.id() : hole.note();
    }

    private static Point2 middle(List<Point2> spots) {
        double x = spots.stream().mapToDouble(Point2::x).average().orElse(0);
        double y = spots.stream().mapToDouble(Point2::y).average().orElse(0);
        return new Point2(x, y);
    }

    /** Zero again by a hole that is bored or reamed, else by what it was found by. */
    private String lost() {
        for (OperationStage on : stage.operations()) {
            boolean trueHole = setUp.operation(on.operation())
                    .filter(operation ->
                            operation.kind() == Operation.Kind.REAM || operation.kind() == Operation.Kind.BORE)
                    .isPresent();
            if (trueHole && !on.spots().isEmpty()) {
                Point2 spot = on.spots().get(0);
                return "Zero lost: find it again as at first; once hole "
                        + HoleNumbers.of(stage).at(spot) + " is finished, sweep that: it stands at "
                        + positions.both(spot) + ".";
            }
        }
        return "Zero lost: find it again as at first, and try a finished hole with the tool at rest before cutting on.";
    }
}

package setwright.plan.room;

import java.util.Optional;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnOperation;
import setwright.plan.part.OperationStage;

/**
 * The operation before, as far as changing its tool goes.
 *
 * @param projection of its tool below the nose, mm
 * @param last hole that it was in; empty for milling, which ends anywhere
 */
public record Earlier(DrawnOperation operation, double projection, Optional<Point2> last) {
    static Earlier of(DrawnOperation operation, OperationStage on) {
        return new Earlier(
                operation,
                on.projection(),
                on.spots().isEmpty()
                        ? Optional.empty()
                        : Optional.of(on.spots().get(on.spots().size() - 1)));
    }

    boolean sameTool(DrawnOperation next) {
        return operation.cutter().value().equals(next.cutter().value())
                && sameHolder(next)
                && operation.stickOut().value().equals(next.stickOut().value());
    }

    boolean sameHolder(DrawnOperation next) {
        return operation.holder().value().equals(next.holder().value());
    }
}

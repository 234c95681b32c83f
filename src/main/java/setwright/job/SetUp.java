package setwright.job;

import java.util.List;
import setwright.geometry.Side;

/**
 * One clamping of the part.
 *
 * @param up side of the part that faces the spindle
 * @param quarterTurns about the upright axis, anticlockwise seen from above, after the side is up
 * @param holding what holds it
 * @param datum how the zero is found
 * @param operations in working order; features of this side that none of them makes are added in pencil
 */
public record SetUp(
        String id,
        String title,
        Plannable<Side> up,
        int quarterTurns,
        Holding holding,
        ZeroFinding datum,
        List<Operation> operations) {

    public SetUp {
        operations = List.copyOf(operations);
    }

    public SetUp withUp(Plannable<Side> changed) {
        return new SetUp(id, title, changed, quarterTurns, holding, datum, operations);
    }

    public SetUp withHolding(Holding changed) {
        return new SetUp(id, title, up, quarterTurns, changed, datum, operations);
    }

    public SetUp withDatum(ZeroFinding changed) {
        return new SetUp(id, title, up, quarterTurns, holding, changed, operations);
    }

    public SetUp withOperations(List<Operation> changed) {
        return new SetUp(id, title, up, quarterTurns, holding, datum, changed);
    }
}

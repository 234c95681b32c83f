package setwright.plan.cut;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.cutting.CuttingPower;
import setwright.quantity.Value;

/**
 * What all cuts in holes have in common.
 *
 * @param feed per turn
 * @param thrust null where none is worked out
 * @param opinions the same figures worked out another way
 */
record HoleCut(
        Value feed, Value torque, @Nullable Value thrust, int passes, List<SecondOpinion> opinions, HoleWork work) {

    OperationCut of(CutQuestion question) {
        Value power = CuttingPower.POWER.of(torque, question.speed());
        return new OperationCut(
                question.operation().id(),
                question.speed(),
                question.wantedSpeed(),
                question.feed(),
                feed,
                null,
                question.place().depth(),
                question.opened(),
                passes,
                power,
                torque,
                null,
                thrust,
                null,
                null,
                null,
                null,
                null,
                opinions,
                null,
                HoleLimits.of(question, this, power),
                work,
                List.of(),
                List.of());
    }
}

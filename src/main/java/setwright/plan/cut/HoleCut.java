package setwright.plan.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.cutting.CuttingPower;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.quantity.Value;

/** What all cuts in holes have in common: power from torque, and their limits. */
final class HoleCut {
    private HoleCut() {}

    static OperationCut of(CutQuestion question, Value feedPerTurn, Value torque, @Nullable Value thrust) {
        return of(question, feedPerTurn, torque, thrust, 1);
    }

    static OperationCut of(CutQuestion question, Value feedPerTurn, Value torque, @Nullable Value thrust, int passes) {
        Value power = CuttingPower.POWER.of(torque, question.speed());
        return new OperationCut(
                question.operation().id(),
                question.speed(),
                question.wantedSpeed(),
                question.feed(),
                feedPerTurn,
                null,
                question.stage().workTop() - question.stage().lowest(),
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
                List.of(),
                limits(question, power));
    }

    private static List<Limit> limits(CutQuestion question, Value power) {
        List<Limit> limits = new ArrayList<>();
        if (question.speed().inside() <= 0) {
            return limits;
        }
        limits.add(new Limit(LimitName.CUTTING_EDGE, question.shareOfCuttingSpeed()));
        limits.add(new Limit(LimitName.SPINDLE_POWER, power.inside() / question.spindlePower()));
        limits.sort(Comparator.comparingDouble(Limit::used).reversed().thenComparing(Limit::name));
        return limits;
    }
}

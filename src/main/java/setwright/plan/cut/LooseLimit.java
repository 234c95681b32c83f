package setwright.plan.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.cutting.LimitName;
import setwright.quantity.Band;

/**
 * A limit of which only an estimate is known: it is told beside the limits, and governs nothing.
 *
 * @param used from the share at the good end of the estimate to that at the poor end; null where it cannot be told at all
 */
public record LooseLimit(LimitName name, @Nullable Band used) {
    /** Chatter of a tool that nobody tapped, and spring of the work where the drawing says how much it may. */
    static List<LooseLimit> of(OperationCut cut) {
        List<LooseLimit> found = new ArrayList<>();
        Stability stability = cut.stability();
        if (stability != null && stability.basis() == Stability.Basis.ESTIMATED) {
            found.add(new LooseLimit(LimitName.CHATTER, chatter(stability)));
        }
        cut.work().stream()
                .map(WorkGives::used)
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(Band::expected))
                .ifPresent(used -> found.add(new LooseLimit(LimitName.WORK_SPRING, used)));
        return found;
    }

    /** None where so many waves fit between teeth that no depth can be told at this speed. */
    private static @Nullable Band chatter(Stability stability) {
        Band quiet = stability.depth();
        double depth = stability.question().depth();
        return quiet == null || quiet.low() <= 0
                ? null
                : new Band(depth / quiet.high(), depth / quiet.expected(), depth / quiet.low());
    }
}

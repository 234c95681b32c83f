package setwright.plan.cut;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.cutting.LimitName;
import setwright.plan.cut.LimitRule.Binds;

/**
 * The deepest pass that keeps every limit at the speed and feed that are planned.
 *
 * @param depth mm
 * @param passes how many of it reach the whole depth
 * @param stoppedBy what stands in the way of more; null where the flutes end first
 */
public record DepthAdvice(
        double depth, int passes, @Nullable LimitName stoppedBy) {
    /**
     * @param rule of the depth
     * @param whole depth that is to be reached, mm
     * @param flutes length of the cutter's flutes, mm
     */
    static DepthAdvice of(LimitRule rule, double whole, double flutes) {
        Optional<Binds> first = rule.first().filter(binds -> binds.at() < flutes);
        double depth = first.map(Binds::at).orElse(flutes);
        int passes = (int) Math.max(1, Math.ceil(whole / depth - 1e-9));
        return new DepthAdvice(depth, passes, first.map(Binds::limit).orElse(null));
    }
}

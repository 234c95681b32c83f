package setwright.plan.cut;

import org.jspecify.annotations.Nullable;
import setwright.cutting.LimitName;

/**
 * A depth of pass that was searched for, and the passes that it makes.
 *
 * @param deepest mm
 * @param passes how many of them reach the whole depth
 * @param stoppedBy the limit that stands in the way of more; null where the flutes, or what is usual, end first
 */
public record PassDepth(
        double deepest, int passes, @Nullable LimitName stoppedBy) {
    /** A pass that is printed rounded may be deeper than it was found by so much, as a share. */
    private static final double ROUNDED = 0.02;

    static PassDepth of(LimitSearch.Found found, double whole) {
        int passes = (int) Math.max(1, Math.ceil(whole / found.value() - ROUNDED));
        return new PassDepth(found.value(), passes, found.stoppedBy());
    }
}

package setwright.caution.choice;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.holding.HoldFactor;
import setwright.job.Job;

/**
 * What may be taken, with its place in the ranking.
 *
 * @param rank from 1, the best first
 * @param id of the holder's row; of a holding its kind
 * @param text in the words of the shop
 * @param now whether the plan has it
 * @param kept whether nothing stops it
 * @param reasons for it or against it, in words and numbers
 * @param holdFactor how the work is held where it is held least; null where that is not worked out
 * @param batch all parts with their set-ups, s; null where it was not tried
 * @param changed the job that takes it
 */
public record Ranked(
        int rank,
        String id,
        String text,
        boolean now,
        boolean kept,
        List<String> reasons,
        @Nullable HoldFactor holdFactor,
        @Nullable Double batch,
        Job changed) {
    public Ranked {
        reasons = List.copyOf(reasons);
    }
}

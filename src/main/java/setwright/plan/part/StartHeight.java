package setwright.plan.part;

import java.util.List;
import setwright.geometry.Side;
import setwright.job.Block;
import setwright.job.Face;
import setwright.job.Feature;
import setwright.job.Job;

/** How high the part still is at the start of a set-up, mm: the blank less what earlier set-ups faced off. */
public final class StartHeight {
    private StartHeight() {}

    /**
     * @param earlier sides that were up in the set-ups before
     * @param up side that is up now
     */
    public static double of(Job job, List<Side> earlier, Side up) {
        Block blank = job.plan().blank().envelope();
        double height = Lying.of(blank, up, 0).upright().greatestMm();
        return job.plan().features().stream()
                .filter(feature -> feature.kind() == Feature.Kind.FACE)
                .filter(feature -> feature.side() == up || feature.side() == up.opposite())
                .filter(feature -> earlier.contains(feature.side()))
                .mapToDouble(feature -> ((Face) feature).across().nominal().inside())
                .reduce(height, Math::min);
    }
}

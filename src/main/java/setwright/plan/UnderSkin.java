package setwright.plan;

import java.util.List;
import setwright.job.Face;
import setwright.job.FaceState;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.plan.part.Heights;

/** Whether a facing cut is the first in a cast, hot rolled or flame cut face, whose skin is hard on an edge. */
public final class UnderSkin {
    private static final List<FaceState> SKIN = List.of(FaceState.CAST, FaceState.HOT_ROLLED, FaceState.FLAME_CUT);

    private UnderSkin() {}

    /** @param heights where the part stands; a face that an earlier set-up cut has nothing over its finished height */
    public static boolean cuts(Job job, Operation.Kind kind, List<String> features, Heights heights) {
        return kind == Operation.Kind.FACE
                && heights.startTop() > heights.finishedTop()
                && job.plan().features().stream()
                        .filter(feature -> features.contains(feature.id()))
                        .filter(Face.class::isInstance)
                        .map(Feature::side)
                        .anyMatch(
                                side -> SKIN.contains(job.plan().blank().faces().getOrDefault(side, FaceState.SAWN)));
    }
}

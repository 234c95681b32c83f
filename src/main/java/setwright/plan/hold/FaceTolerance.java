package setwright.plan.hold;

import java.util.Optional;
import setwright.job.DrawnSetUp;
import setwright.job.Face;
import setwright.job.Job;
import setwright.job.Operation;
import setwright.job.Size;

/** What the faces that are cut in a set-up may be out. */
record FaceTolerance(Job job, DrawnSetUp setUp) {
    /** Half the tolerance of the closest one, mm; empty where none has any. */
    Optional<Double> half() {
        return setUp.operations().stream()
                .filter(one -> one.kind() == Operation.Kind.FACE)
                .flatMap(one -> job.plan().features().stream()
                        .filter(feature -> one.features().contains(feature.id())))
                .filter(Face.class::isInstance)
                .map(feature -> ((Face) feature).across())
                .filter(size -> size.greatestMm() > size.leastMm())
                .map(FaceTolerance::half)
                .min(Double::compare);
    }

    private static double half(Size size) {
        return (size.greatestMm() - size.leastMm()) / 2;
    }
}

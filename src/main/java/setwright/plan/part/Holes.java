package setwright.plan.part;

import java.util.List;
import java.util.stream.Stream;
import setwright.job.DrawnOperation;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Job;

/** The hole features that an operation makes, in the order it names them. */
public final class Holes {
    private Holes() {}

    public static Stream<Hole> of(DrawnOperation operation, Job job) {
        List<Feature> features = job.plan().features();
        return operation.features().stream()
                .flatMap(id -> features.stream().filter(feature -> feature.id().equals(id)))
                .filter(feature -> feature.kind() == Feature.Kind.HOLE)
                .map(Hole.class::cast);
    }
}

package setwright.plan.place;

import java.util.List;
import java.util.Optional;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnUp;
import setwright.job.Feature;
import setwright.job.Operation;

/** The operation that gives a feature its place or size, in its set-up. */
record Making(DrawnSetUp setUp, DrawnOperation operation) {
    private static final List<Operation.Kind> PLACING = List.of(Operation.Kind.BORE, Operation.Kind.DRILL);
    private static final List<Operation.Kind> SIZING =
            List.of(Operation.Kind.BORE, Operation.Kind.REAM, Operation.Kind.DRILL);
    private static final List<Operation.Kind> DEEPENING = List.of(Operation.Kind.DRILL, Operation.Kind.BORE);

    /** The one that sets the place of a feature: a hole is where it is bored, else where it is drilled. */
    static Optional<Making> place(DrawnUp drawnUp, Feature feature) {
        return feature.kind() == Feature.Kind.HOLE ? first(drawnUp, feature, PLACING) : last(drawnUp, feature);
    }

    static Optional<Making> size(DrawnUp drawnUp, Asked asked) {
        if (asked.feature().kind() != Feature.Kind.HOLE) {
            return last(drawnUp, asked.feature());
        }
        return first(drawnUp, asked.feature(), asked.aspect() == Aspect.DEPTH ? DEEPENING : SIZING);
    }

    private static Optional<Making> first(DrawnUp drawnUp, Feature feature, List<Operation.Kind> kinds) {
        return kinds.stream()
                .flatMap(kind -> all(drawnUp, feature).stream()
                        .filter(making -> making.operation().kind() == kind))
                .findFirst();
    }

    private static Optional<Making> last(DrawnUp drawnUp, Feature feature) {
        List<Making> all = all(drawnUp, feature);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    private static List<Making> all(DrawnUp drawnUp, Feature feature) {
        return drawnUp.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream()
                        .filter(operation -> operation.features().contains(feature.id()))
                        .map(operation -> new Making(setUp, operation)))
                .toList();
    }
}

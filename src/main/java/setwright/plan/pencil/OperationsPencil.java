package setwright.plan.pencil;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import setwright.geometry.Side;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.job.SetUp;

/** Order: adds the operations that the features of a side need and nobody wrote down, each in its working place. */
final class OperationsPencil {
    private final Drafting drafting;

    OperationsPencil(Drafting drafting) {
        this.drafting = drafting;
    }

    /** The set-up's own operations in their order, with the missing ones put in before the first of a later kind. */
    List<Operation> complete(SetUp setUp, Side up) {
        List<Operation> all = new ArrayList<>(setUp.operations());
        for (Operation missing : missing(setUp, up)) {
            all.add(place(all, missing), missing);
        }
        return all;
    }

    private static int place(List<Operation> all, Operation missing) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).kind().compareTo(missing.kind()) > 0) {
                return i;
            }
        }
        return all.size();
    }

    private List<Operation> missing(SetUp setUp, Side up) {
        List<Operation> found = new ArrayList<>();
        List<String> spotted = new ArrayList<>();
        for (Feature feature : drafting.on(up)) {
            for (Operation.Kind kind : steps(feature)) {
                if (made(feature.id(), kind)) {
                    continue;
                }
                if (kind == Operation.Kind.SPOT) {
                    spotted.add(feature.id());
                } else {
                    found.add(Operation.pencilled(id(feature.id(), kind), kind, List.of(feature.id())));
                }
            }
        }
        if (!spotted.isEmpty()) {
            found.add(Operation.pencilled(id(setUp.id(), Operation.Kind.SPOT), Operation.Kind.SPOT, spotted));
        }
        found.sort(Comparator.comparing(Operation::kind));
        return found;
    }

    /** Whether some operation of the job, in whatever set-up, makes that step of the feature. */
    private boolean made(String feature, Operation.Kind kind) {
        return drafting.job().plan().setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .anyMatch(operation ->
                        operation.kind() == kind && operation.features().contains(feature));
    }

    private static String id(String of, Operation.Kind kind) {
        return of + "-" + kind.name().toLowerCase(java.util.Locale.ROOT);
    }

    /** What a feature needs, in working order. */
    private static List<Operation.Kind> steps(Feature feature) {
        return switch (feature.kind()) {
            case FACE -> List.of(Operation.Kind.FACE);
            case HOLE ->
                switch (((Hole) feature).make()) {
                    case PLAIN -> List.of(Operation.Kind.SPOT, Operation.Kind.DRILL);
                    case REAMED -> List.of(Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.REAM);
                    case TAPPED -> List.of(Operation.Kind.SPOT, Operation.Kind.DRILL, Operation.Kind.TAP);
                };
        };
    }

    /** Sides that carry features, in the order of {@link Side}. */
    Set<Side> sides() {
        Set<Side> found = new LinkedHashSet<>();
        for (Side side : Side.values()) {
            if (!drafting.on(side).isEmpty()) {
                found.add(side);
            }
        }
        return found;
    }
}

package setwright.job;

import static setwright.job.Feature.Kind.ARC_SLOT;
import static setwright.job.Feature.Kind.CHAMFER;
import static setwright.job.Feature.Kind.DIVIDED;
import static setwright.job.Feature.Kind.DOVETAIL;
import static setwright.job.Feature.Kind.FACE;
import static setwright.job.Feature.Kind.FLATS;
import static setwright.job.Feature.Kind.HOLE;
import static setwright.job.Feature.Kind.INCLINED_FACE;
import static setwright.job.Feature.Kind.KEYSEAT;
import static setwright.job.Feature.Kind.POCKET;
import static setwright.job.Feature.Kind.PROFILE;
import static setwright.job.Feature.Kind.RADIUS_END;
import static setwright.job.Feature.Kind.SLIT;
import static setwright.job.Feature.Kind.SLOT;
import static setwright.job.Feature.Kind.STEP;
import static setwright.job.Feature.Kind.T_SLOT;
import static setwright.job.Feature.Kind.WOODRUFF_SEAT;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Changes of which operations a set-up has, and in which order; each {@code Job -> Job}. */
public final class OperationEdits {
    private OperationEdits() {}

    /** Whether an operation of this kind can make a feature of that. */
    public static boolean suits(Operation.Kind operation, Feature.Kind feature) {
        return switch (operation) {
            case FACE -> any(feature, FACE, INCLINED_FACE, FLATS, DIVIDED);
            case STEP -> any(feature, STEP);
            case PROFILE -> any(feature, PROFILE, RADIUS_END, STEP);
            case POCKET -> any(feature, POCKET);
            case SLOT -> any(feature, SLOT, ARC_SLOT, T_SLOT, DOVETAIL);
            case KEYSEAT -> any(feature, KEYSEAT);
            case T_SLOT -> any(feature, T_SLOT);
            case DOVETAIL -> any(feature, DOVETAIL);
            case WOODRUFF -> any(feature, WOODRUFF_SEAT);
            case SAW -> any(feature, SLIT);
            case SPOT, DRILL -> any(feature, HOLE, DIVIDED);
            case BORE, REAM, COUNTERBORE, SPOTFACE, COUNTERSINK, TAP -> any(feature, HOLE);
            case CHAMFER -> any(feature, CHAMFER);
            case FORM, SCRIBE -> any(feature, DIVIDED);
        };
    }

    private static boolean any(Feature.Kind feature, Feature.Kind... kinds) {
        return List.of(kinds).contains(feature);
    }

    /**
     * A further operation, all of its values pencilled.
     *
     * @param after id of the operation that it follows; the first of the set-up where there is none such
     * @param features ids of what it makes
     */
    public static Added added(DrawnUp drawnUp, String setUp, String after, Operation.Kind kind, List<String> features) {
        List<SetUp> route = Edits.writtenWhole(drawnUp);
        String first = features.isEmpty() ? setUp : features.get(0);
        String id = Ids.free(Ids.operation(first, kind), ids(route));
        Job job = Edits.changedSetUp(drawnUp.job(), route, setUp, before -> {
            List<Operation> all = new ArrayList<>(before.operations());
            all.add(place(all, after) + 1, Operation.pencilled(id, kind, features));
            return before.withOperations(all);
        });
        return new Added(job, id);
    }

    /** The same operation once more behind itself, with all that is inked in it. */
    public static Added duplicated(DrawnUp drawnUp, String operation) {
        String id = Ids.free(operation, ids(Edits.writtenWhole(drawnUp)));
        Job job = changed(
                drawnUp,
                operation,
                all -> all.add(
                        place(all, operation) + 1,
                        all.get(place(all, operation)).withId(id)));
        return new Added(job, id);
    }

    /** Without the operation; where its features still ask for it, it comes back in pencil. */
    public static Job deleted(DrawnUp drawnUp, String operation) {
        return changed(drawnUp, operation, all -> all.remove(place(all, operation)));
    }

    /** The operation so many places later, or earlier, within its set-up. */
    public static Job moved(DrawnUp drawnUp, String operation, int by) {
        return changed(drawnUp, operation, all -> RouteEdits.move(all, place(all, operation), by));
    }

    /** Ids of all operations; a list that may grow. */
    static List<String> ids(List<SetUp> route) {
        List<String> ids = new ArrayList<>();
        route.forEach(setUp -> setUp.operations().forEach(operation -> ids.add(operation.id())));
        return ids;
    }

    private static Job changed(DrawnUp drawnUp, String operation, Consumer<List<Operation>> change) {
        List<SetUp> route = Edits.writtenWhole(drawnUp);
        SetUp of = route.stream()
                .filter(setUp -> place(setUp.operations(), operation) >= 0)
                .findFirst()
                .orElseThrow(() -> Edits.missing("operation", operation));
        return Edits.changedSetUp(drawnUp.job(), route, of.id(), before -> {
            List<Operation> all = new ArrayList<>(before.operations());
            change.accept(all);
            return before.withOperations(all);
        });
    }

    /** -1 where it is not among them. */
    private static int place(List<Operation> all, String id) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }
}

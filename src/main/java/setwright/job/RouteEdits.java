package setwright.job;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import setwright.geometry.Side;

/**
 * Changes of the route, each {@code Job -> Job}. The whole route is written down first, every value still pencilled, so
 * that no operation that was only pencilled changes its set-up.
 */
public final class RouteEdits {
    private RouteEdits() {}

    /** A further set-up behind another: the part turned over, held as the pencil holds it, nothing done in it yet. */
    public static Added added(DrawnUp drawnUp, String after) {
        List<SetUp> route = Edits.writtenWhole(drawnUp);
        int at = place(route, after);
        Side up =
                drawnUp.setUp(after).map(drawn -> drawn.up().value().opposite()).orElse(Side.TOP);
        String id = Ids.setUp(ids(route));
        route.add(
                at + 1,
                new SetUp(
                        id,
                        SetUp.title(up),
                        Plannable.inked(up),
                        0,
                        new UndecidedHolding(),
                        ZeroFinding.EDGES,
                        List.of()));
        return new Added(job(drawnUp, route), id);
    }

    /** The same set-up once more behind itself, with all that is inked in it. */
    public static Added duplicated(DrawnUp drawnUp, String setUp) {
        List<SetUp> route = Edits.writtenWhole(drawnUp);
        int at = place(route, setUp);
        SetUp before = route.get(at);
        String id = Ids.setUp(ids(route));
        List<String> taken = OperationEdits.ids(route);
        List<Operation> operations = new ArrayList<>();
        for (Operation operation : before.operations()) {
            Operation copy = operation.withId(Ids.free(operation.id(), taken));
            taken.add(copy.id());
            operations.add(copy);
        }
        route.add(at + 1, before.withIds(id, operations));
        return new Added(job(drawnUp, route), id);
    }

    /**
     * Some operations of a set-up in a clamping of their own with the same side up, held as the pencil holds it: behind the
     * others, or before them where they are its first.
     */
    public static Added clampedAnew(DrawnUp drawnUp, String setUp, List<String> operations) {
        List<SetUp> route = Edits.writtenWhole(drawnUp);
        int at = place(route, setUp);
        SetUp whole = route.get(at);
        Holding on = whole.holding().kind() == Holding.Kind.UNDECIDED ? TableHolding.pencilled() : whole.holding();
        List<Operation> moved = whole.operations().stream()
                .filter(one -> operations.contains(one.id()))
                .toList();
        List<Operation> rest = whole.operations().stream()
                .filter(one -> !operations.contains(one.id()))
                .toList();
        boolean first = whole.operations().indexOf(moved.get(0)) == 0;
        String id = Ids.setUp(ids(route));
        route.set(at, whole.withOperations(rest));
        route.add(
                first ? at : at + 1,
                whole.withIds(id, moved)
                        .withTitle(whole.title() + ", clamps moved")
                        .withHolding(bare(on)));
        return new Added(job(drawnUp, route), id);
    }

    /** The same kind of holding with its clamps left to the pencil. */
    private static Holding bare(Holding holding) {
        return switch (holding.kind()) {
            case TABLE -> TableHolding.pencilled();
            case DEVICE -> ((DeviceHolding) holding).withStraps(List.of());
            case UNDECIDED, VISE -> holding;
        };
    }

    /** Without the set-up; what features still ask for comes back in pencil. */
    public static Job deleted(DrawnUp drawnUp, String setUp) {
        List<SetUp> route = Edits.writtenWhole(drawnUp);
        route.remove(place(route, setUp));
        return job(drawnUp, route);
    }

    /** The set-up so many places later, or earlier; at most to the end of the route. */
    public static Job moved(DrawnUp drawnUp, String setUp, int by) {
        List<SetUp> route = Edits.writtenWhole(drawnUp);
        move(route, place(route, setUp), by);
        return job(drawnUp, route);
    }

    /** Another side up, inked; what is only pencilled in the set-up follows its side. */
    public static Job turned(DrawnUp drawnUp, String setUp, Side up) {
        Side from = drawnUp.setUp(setUp).map(drawn -> drawn.up().value()).orElse(up);
        return Edits.changedSetUp(drawnUp.job(), Edits.written(drawnUp), setUp, before -> before.turned(from, up));
    }

    /** The pencil may choose the side again. */
    public static Job turnedByPencil(DrawnUp drawnUp, String setUp) {
        return Edits.changedSetUp(
                drawnUp.job(), Edits.written(drawnUp), setUp, before -> before.withUp(Plannable.pencilled()));
    }

    static <T> void move(List<T> all, int from, int by) {
        int to = Math.max(0, Math.min(all.size() - 1, from + by));
        Collections.rotate(all.subList(Math.min(from, to), Math.max(from, to) + 1), from < to ? -1 : 1);
    }

    private static Job job(DrawnUp drawnUp, List<SetUp> route) {
        return drawnUp.job().withPlan(drawnUp.job().plan().withSetUps(route));
    }

    private static List<String> ids(List<SetUp> route) {
        return route.stream().map(SetUp::id).toList();
    }

    private static int place(List<SetUp> route, String id) {
        for (int i = 0; i < route.size(); i++) {
            if (route.get(i).id().equals(id)) {
                return i;
            }
        }
        throw Edits.missing("set-up", id);
    }
}

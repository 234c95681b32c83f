package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import setwright.caution.Finding;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.plan.NotChecked;
import setwright.plan.Plan;
import setwright.plan.room.OperationRoom;

/** Goes through the operations of a plan. */
final class Operations {
    /** What has to be there before anything can be said about the room of an operation. */
    static final String FOR_ROOM = "a cutter in a holder of the shop, and what holds the part";

    private Operations() {}

    /** An operation in its set-up. */
    record In(Plan plan, DrawnSetUp setUp, DrawnOperation operation) {
        String at() {
            return Words.at(setUp.id(), operation.id());
        }

        Finding unlooked(String slug, String needs) {
            return new Finding.Unlooked(new NotChecked(slug, setUp.id(), operation.id(), needs));
        }
    }

    /** Every operation, in working order. */
    static Stream<In> all(Plan plan) {
        return plan.drawnUp().setUps().stream().flatMap(setUp -> in(plan, setUp));
    }

    static Stream<In> in(Plan plan, DrawnSetUp setUp) {
        return setUp.operations().stream().map(operation -> new In(plan, setUp, operation));
    }

    /** What a check finds in the room of each operation; where that could not be worked out, it could not look. */
    static List<Finding> inItsRoom(Plan plan, String slug, RoomCheck check) {
        List<Finding> found = new ArrayList<>();
        all(plan)
                .forEach(in -> found.add(plan.room()
                        .operation(in.operation().id())
                        .map(room -> check.look(in, room))
                        .orElseGet(() -> in.unlooked(slug, FOR_ROOM))));
        return found;
    }

    /** Looks at one operation in its room. */
    @FunctionalInterface
    interface RoomCheck {
        Finding look(In in, OperationRoom room);
    }

    static List<Finding> each(Plan plan, Function<In, Finding> look) {
        return all(plan).map(look).toList();
    }

    /** The set-up of that id, which a caution of this plan named. */
    static DrawnSetUp setUp(Plan plan, String id) {
        return plan.drawnUp()
                .setUp(id)
                .orElseThrow(() -> new IllegalArgumentException("The plan has no set-up " + id + "."));
    }

    /** The operation of that id, which a caution of this plan named. */
    static DrawnOperation operation(Plan plan, String setUp, String id) {
        return setUp(plan, setUp)
                .operation(id)
                .orElseThrow(() -> new IllegalArgumentException("The plan has no operation " + setUp + "/" + id + "."));
    }
}

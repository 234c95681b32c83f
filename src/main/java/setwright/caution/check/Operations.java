package setwright.caution.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Finding;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Feature;
import setwright.job.Operation;
import setwright.plan.NotChecked;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.part.OperationStage;
import setwright.plan.room.OperationRoom;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/** Goes through the operations of a plan. */
final class Operations {
    /** What has to be there before anything can be said about the room of an operation. */
    static final String FOR_ROOM = "a cutter in a holder of the shop, and what holds the part";

    /** What has to be there before anything can be said about the tool of an operation. */
    static final String FOR_TOOL = "a cutter in a holder of the shop";

    /** What has to be there before anything can be said about the cut of an operation. */
    static final String FOR_CUT = "a cutter in its holder, and a row of cutting speeds for it";

    private Operations() {}

    /** An operation in its set-up. */
    record In(Plan plan, DrawnSetUp setUp, DrawnOperation operation) {
        String at() {
            return Words.at(setUp.id(), operation.id());
        }

        /** What it cuts with, in the shop's words. */
        String cutter() {
            return new Words(plan).cutter(operation);
        }

        /** Another operation of the same set-up. */
        In other(String id) {
            return new In(plan, setUp, Operations.operation(plan, setUp.id(), id));
        }

        Optional<Cutter> cutterRow() {
            return plan.rows().cutter(operation.cutter().value());
        }

        Optional<Holder> holderRow() {
            return plan.rows().holder(operation.holder().value());
        }

        Optional<OperationRoom> room() {
            return plan.room().operation(operation.id());
        }

        boolean hasRoom() {
            return room().isPresent();
        }

        /** Whether the tool comes straight down into a hole; everything else is milled. */
        boolean makesHoles() {
            return operation.kind().inHole();
        }

        /** A point that only scribes lines has no load. */
        boolean cuts() {
            return operation.kind() != Operation.Kind.SCRIBE;
        }

        /** What of the drawing it cuts. */
        Stream<Feature> features() {
            return plan.job().plan().features().stream()
                    .filter(feature -> operation.features().contains(feature.id()));
        }

        /** A place of this operation. */
        Caution.Place place(String subject) {
            return Caution.Place.of(setUp.id(), operation.id(), subject, subject.replace('-', ' '));
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

    /** What a check finds where each operation stands; where that could not be worked out, it could not look. */
    static List<Finding> onItsStage(Plan plan, String slug, BiFunction<In, OperationStage, Finding> check) {
        return each(
                plan,
                in -> plan.part()
                        .operation(in.operation().id())
                        .map(on -> check.apply(in, on))
                        .orElseGet(() -> in.unlooked(slug, FOR_ROOM)));
    }

    /** What a check finds in the cut of each operation that it is meant for; where there is none, it could not look. */
    static List<Finding> inItsCut(
            Plan plan, String slug, Predicate<In> meant, BiFunction<In, OperationCut, Finding> check) {
        return all(plan)
                .filter(in -> in.cuts() && meant.test(in))
                .map(in -> plan.cut()
                        .operation(in.operation().id())
                        .map(cut -> check.apply(in, cut))
                        .orElseGet(() -> in.unlooked(slug, FOR_CUT)))
                .toList();
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

package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnVise;
import setwright.plan.Plan;
import setwright.plan.Rows;
import setwright.plan.part.SetUpStage;
import setwright.shop.DividingHead;
import setwright.shop.FixturePlate;
import setwright.shop.MagneticChuck;
import setwright.shop.RotaryTable;
import setwright.shop.Vise;

/** What a set-up puts on the table. */
record OnTheTable(Plan plan, DrawnSetUp setUp, SetUpStage stage) {
    /** A device with its mass, kg. */
    record Device(String id, String name, double mass) {}

    static List<OnTheTable> all(Plan plan) {
        return plan.drawnUp().setUps().stream()
                .flatMap(setUp ->
                        plan.part().setUp(setUp.id()).stream().map(stage -> new OnTheTable(plan, setUp, stage)))
                .toList();
    }

    /** Of the largest blank as it is put in, kg. */
    double part() {
        return stage.start().bound() * plan.rows().material().density().inside();
    }

    /** What holds it, as far as the shop says what that weighs. */
    List<Device> devices() {
        return ids().flatMap(id -> device(plan.rows(), id).stream()).toList();
    }

    private Stream<String> ids() {
        DrawnHolding holding = setUp.holding();
        return switch (holding.kind()) {
            case VISE -> Stream.of(((DrawnVise) holding).vise().value());
            case DEVICE ->
                Stream.of(
                        ((DrawnDevice) holding).device().value(),
                        ((DrawnDevice) holding).vise().value());
            case TABLE -> Stream.empty();
        };
    }

    private static Optional<Device> device(Rows rows, String id) {
        return rows.vise(id)
                .map((Vise row) -> new Device(id, row.name(), row.mass().inside()))
                .or(() -> rows.row(id, RotaryTable.class)
                        .map(row -> new Device(id, row.name(), row.mass().inside())))
                .or(() -> rows.row(id, DividingHead.class)
                        .map(row -> new Device(id, row.name(), row.mass().inside())))
                .or(() -> rows.row(id, MagneticChuck.class)
                        .map(row -> new Device(id, row.name(), row.mass().inside())))
                .or(() -> rows.row(id, FixturePlate.class).map(row -> new Device(id, row.name(), row.mass())));
    }

    String at() {
        return Words.at(setUp.id(), "");
    }
}

package setwright.plan.hold;

import java.util.List;
import java.util.Optional;
import setwright.job.DrawnDevice;
import setwright.job.DrawnSetUp;
import setwright.job.DrawnTable;
import setwright.plan.Rows;
import setwright.plan.part.SetUpStage;

/** Finds the balance for a holding, and says which of its joints nobody balances yet. */
final class Balances {
    private Balances() {}

    static Optional<Balance> of(DrawnSetUp setUp, SetUpStage stage, Rows rows) {
        return switch (setUp.holding().kind()) {
            case VISE -> ViseBalance.of(setUp, stage, rows);
            case TABLE -> onTable(setUp.id(), (DrawnTable) setUp.holding(), stage, rows);
            case DEVICE -> onDevice(setUp.id(), (DrawnDevice) setUp.holding(), stage, rows);
        };
    }

    private static Optional<Balance> onTable(String id, DrawnTable table, SetUpStage stage, Rows rows) {
        StrapBalance straps = new StrapBalance(id, table.straps(), table.stops(), stage, rows);
        return switch (table.seat().value()) {
            case TABLE -> straps.flat(Bearings.face(stage.heights()), BearingFriction.onTable(rows));
            case PACKING -> straps.flat(Bearings.packing(table, stage.heights(), rows), BearingFriction.onSteel(rows));
            case T_SLOT -> straps.round(Bearings.slot(stage.heights(), rows), BearingFriction.onTable(rows));
        };
    }

    private static Optional<Balance> onDevice(String id, DrawnDevice device, SetUpStage stage, Rows rows) {
        StrapBalance straps = new StrapBalance(id, device.straps(), device.stops(), stage, rows);
        return switch (device.on()) {
            case V_BLOCKS ->
                Bearings.vees(device, stage.heights(), rows)
                        .flatMap(vee -> straps.round(vee, BearingFriction.onSteel(rows)));
            case FIXTURE_PLATE, ROTARY_TABLE ->
                straps.flat(Bearings.face(stage.heights()), BearingFriction.onTable(rows));
            case SET_UP_BLOCKS -> straps.flat(Bearings.blocks(stage.heights()), BearingFriction.onSteel(rows));
            case ANGLE_PLATE -> straps.upright(BearingFriction.onTable(rows));
            case MAGNETIC_CHUCK -> MagnetBalance.of(id, device, stage, rows);
            case COLLET_BLOCK -> ColletBlockBalance.of(id, device, stage, rows);
            case DIVIDING_HEAD -> Optional.empty();
        };
    }

    /** The joints of a holding that are not balanced, in words. */
    static List<String> open(DrawnSetUp setUp) {
        return switch (setUp.holding().kind()) {
            case VISE, TABLE -> List.of();
            case DEVICE ->
                switch (((DrawnDevice) setUp.holding()).on()) {
                    case V_BLOCKS, SET_UP_BLOCKS -> List.of();
                    case FIXTURE_PLATE, ANGLE_PLATE -> List.of("the joint between the device and the table");
                    case ROTARY_TABLE ->
                        List.of("the joint between the rotary table and the table", "the lock of the rotary table");
                    case MAGNETIC_CHUCK -> List.of("the joint between the magnetic chuck and the table");
                    case COLLET_BLOCK -> List.of("the grip of the collet on the bar");
                    case DIVIDING_HEAD -> List.of("the chuck and the lock of the dividing head");
                };
        };
    }
}

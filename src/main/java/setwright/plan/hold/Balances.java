package setwright.plan.hold;

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
            case JACKS -> straps.flat(Bearings.jacks(table, stage.heights(), rows), BearingFriction.onSteel(rows));
            case PACKING -> straps.flat(Bearings.packing(table, stage.heights(), rows), BearingFriction.onSteel(rows));
            case T_SLOT -> straps.round(Bearings.slot(stage.heights(), rows), BearingFriction.onTable(rows));
        };
    }

    private static Optional<Balance> onDevice(String id, DrawnDevice device, SetUpStage stage, Rows rows) {
        RoundBalance round = new RoundBalance(id, device, stage, rows);
        return switch (device.fastening().value()) {
            case STRAPS, BOLTS -> strapped(id, device, stage, rows);
            case TAPE, GLUE -> StuckBalance.of(id, device, stage, rows);
            case SANDWICH -> SandwichBalance.of(id, stage, rows);
            case CHUCK -> round.chuck();
            case COLLET -> round.collet();
            case MANDREL -> round.mandrel();
            case BETWEEN_CENTRES -> round.betweenCentres();
            case MAGNET -> MagnetBalance.of(id, device, stage, rows);
        };
    }

    private static Optional<Balance> strapped(String id, DrawnDevice device, SetUpStage stage, Rows rows) {
        StrapBalance straps = new StrapBalance(id, device.straps(), device.stops(), stage, rows);
        return switch (device.on()) {
            case V_BLOCKS ->
                Bearings.vees(device, stage.heights(), rows)
                        .flatMap(vee -> straps.round(vee, BearingFriction.onSteel(rows)));
            case SET_UP_BLOCKS -> straps.flat(Bearings.blocks(stage.heights()), BearingFriction.onSteel(rows));
            case ANGLE_PLATE -> straps.upright(BearingFriction.onTable(rows));
            case FIXTURE_PLATE, ROTARY_TABLE, MAGNETIC_CHUCK, COLLET_BLOCK, DIVIDING_HEAD ->
                straps.flat(Bearings.face(stage.heights()), BearingFriction.onTable(rows));
        };
    }
}

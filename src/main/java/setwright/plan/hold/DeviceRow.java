package setwright.plan.hold;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.job.DrawnDevice;
import setwright.plan.Rows;
import setwright.quantity.Torque;
import setwright.quantity.Typed;
import setwright.shop.AnglePlate;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.FixturePlate;
import setwright.shop.MagneticChuck;
import setwright.shop.RotaryTable;
import setwright.shop.SetUpBlocks;
import setwright.shop.ShopRow;
import setwright.shop.VBlocks;

/**
 * What a balance asks of the row of a device.
 *
 * @param mass kg; 0 where it is too small to count
 * @param bolted whether bolts of its own hold it on the table
 * @param lock torque that its lock holds; null where it has none, or nobody knows
 */
record DeviceRow(
        String name, double mass, boolean bolted, @Nullable Typed<Torque> lock) {
    /** Of grey iron, kg/mm³ (from memory). */
    private static final double IRON = 7.2e-6;

    static Optional<DeviceRow> of(DrawnDevice device, Rows rows) {
        String id = device.device().value();
        return switch (device.on()) {
            case V_BLOCKS -> rows.row(id, VBlocks.class).map(DeviceRow::loose);
            case SET_UP_BLOCKS -> rows.row(id, SetUpBlocks.class).map(DeviceRow::loose);
            case COLLET_BLOCK -> rows.row(id, ColletBlock.class).map(DeviceRow::loose);
            case ANGLE_PLATE ->
                rows.row(id, AnglePlate.class).map(row -> new DeviceRow(row.name(), mass(row), true, null));
            case FIXTURE_PLATE ->
                rows.row(id, FixturePlate.class).map(row -> new DeviceRow(row.name(), row.mass(), true, null));
            case ROTARY_TABLE ->
                rows.row(id, RotaryTable.class)
                        .map(row -> new DeviceRow(row.name(), row.mass().inside(), true, row.lock()));
            case DIVIDING_HEAD ->
                rows.row(id, DividingHead.class)
                        .map(row -> new DeviceRow(row.name(), row.mass().inside(), true, row.lock()));
            case MAGNETIC_CHUCK ->
                rows.row(id, MagneticChuck.class)
                        .map(row -> new DeviceRow(row.name(), row.mass().inside(), true, null));
        };
    }

    private static DeviceRow loose(ShopRow row) {
        return new DeviceRow(row.name(), 0, false, null);
    }

    private static double mass(AnglePlate row) {
        double legs = row.faceHeight().inside() + row.legDepth().inside();
        return IRON * row.faceWidth().inside() * row.thickness().inside() * legs;
    }
}

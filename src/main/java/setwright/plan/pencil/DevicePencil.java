package setwright.plan.pencil;

import java.util.Comparator;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.plan.Rows;
import setwright.plan.part.Lying;
import setwright.shop.AnglePlate;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.FixturePlate;
import setwright.shop.MagneticChuck;
import setwright.shop.Owned;
import setwright.shop.RotaryTable;
import setwright.shop.SetUpBlocks;
import setwright.shop.ShopRow;
import setwright.shop.VBlocks;

/** Which device of a kind: the first that is owned and takes the part, by its place in the shop's files. */
record DevicePencil(Drafting drafting) {
    String choose(DeviceHolding.On on, DeviceHolding.Fastening fastening, Lying lying) {
        double diameter = Math.min(
                lying.across().nominal().inside(), lying.along().nominal().inside());
        return switch (on) {
            case V_BLOCKS ->
                drafting.rows().all(VBlocks.class).stream()
                        .filter(row -> row.kept().owned() != 0
                                && row.least().inside() <= diameter
                                && row.greatest().inside() >= diameter)
                        .map(ShopRow::id)
                        .findFirst()
                        .orElse(Rows.NOTHING);
            case COLLET_BLOCK ->
                drafting.rows().all(ColletBlock.class).stream()
                        .filter(row ->
                                row.kept().owned() != 0 && row.greatestRound().inside() >= diameter)
                        .map(ShopRow::id)
                        .findFirst()
                        .orElse(Rows.NOTHING);
            case ANGLE_PLATE -> first(AnglePlate.class);
            case FIXTURE_PLATE -> plate(fastening, lying);
            case SET_UP_BLOCKS -> first(SetUpBlocks.class);
            case ROTARY_TABLE -> rotaryTable();
            case DIVIDING_HEAD -> first(DividingHead.class);
            case MAGNETIC_CHUCK -> first(MagneticChuck.class);
        };
    }

    /** Tape, glue and a sandwich want a board that a cutter may run into, as large as the part; all else a plate. */
    private String plate(DeviceHolding.Fastening fastening, Lying lying) {
        boolean board = switch (fastening) {
            case TAPE, GLUE, SANDWICH -> true;
            case STRAPS, BOLTS, CHUCK, COLLET, MANDREL, BETWEEN_CENTRES, MAGNET -> false;
        };
        return drafting.rows().all(FixturePlate.class).stream()
                .filter(row -> row.kept().owned() != 0 && row.madeOf().board() == board)
                .min(Comparator.comparing((FixturePlate row) ->
                        row.length().inside() < lying.along().nominal().inside()))
                .map(ShopRow::id)
                .orElse(board ? plate(DeviceHolding.Fastening.STRAPS, lying) : Rows.NOTHING);
    }

    /** The largest that the shop owns: straps want room beside the part. */
    private String rotaryTable() {
        return drafting.rows().all(RotaryTable.class).stream()
                .filter(row -> row.kept().owned() != 0)
                .max(Comparator.comparingDouble(
                                (RotaryTable row) -> row.diameter().inside())
                        .thenComparing(Comparator.comparing(ShopRow::id).reversed()))
                .map(ShopRow::id)
                .orElse(Rows.NOTHING);
    }

    private <T extends Owned> String first(Class<T> kind) {
        return drafting.rows().all(kind).stream()
                .filter(row -> row.kept().owned() != 0)
                .map(ShopRow::id)
                .findFirst()
                .orElse(Rows.NOTHING);
    }

    /** The face of a rotary table or fixture plate in plan. */
    PlanBox face(DrawnDevice drawn) {
        Point2 middle = new Point2(drawn.x().value().inside(), drawn.y().value().inside());
        String id = drawn.device().value();
        Point2 size = drafting.rows()
                .row(id, FixturePlate.class)
                .map(row -> new Point2(row.length().inside(), row.width().inside()))
                .or(() -> drafting.rows()
                        .row(id, RotaryTable.class)
                        .map(row -> new Point2(
                                row.diameter().inside(), row.diameter().inside())))
                .orElse(Point2.ORIGIN);
        return PlanBox.of(middle.minus(size.times(0.5)), middle.plus(size.times(0.5)));
    }
}

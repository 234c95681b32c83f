package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.job.DeviceHolding;
import setwright.job.Drawn;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.SetUp;
import setwright.job.Strapping;
import setwright.job.TableHolding;
import setwright.plan.part.Heights;
import setwright.plan.part.Laid;
import setwright.plan.part.Lying;
import setwright.plan.part.Seats;
import setwright.plan.part.TableSlots;
import setwright.shop.MachineTable;

/** Holding on the table or on a device: what the part lies on, where, and its straps. */
final class TablePencil {
    private final Drafting drafting;
    private final Laid laid;
    private final Lying lying;

    TablePencil(Drafting drafting, SetUp setUp, Side up) {
        this.drafting = drafting;
        laid = new Laid(up, setUp.quarterTurns(), setUp.tilt());
        lying = Lying.of(drafting.block(), up, setUp.quarterTurns());
    }

    DrawnTable table(TableHolding ink) {
        boolean bar = Seats.barAlong(drafting.job().plan().blank(), laid);
        TablePacking packing = new TablePacking(drafting, laid.up(), StrapPencil.count(lying, bar));
        Drawn<TableHolding.Seat> seat = Drawn.of(ink.seat(), () -> seat(bar, packing));
        Packing under = seat.value() == TableHolding.Seat.PACKING ? packing.choose(ink.packing()) : Packing.NONE;
        DrawnTable bare = new DrawnTable(
                seat,
                Drawn.of(ink.packing(), under::set),
                Drawn.of(ink.packingHeight(), under::height),
                Drawn.of(ink.x(), () -> drafting.length(0)),
                Drawn.of(ink.y(), () -> drafting.length(seat.value() == TableHolding.Seat.T_SLOT ? slot() : 0)),
                List.of(),
                ink.stops());
        List<DrawnStrap> straps = heights(bare)
                .map(heights -> straps(ink.straps(), heights, onTable(heights, bar)))
                .orElse(List.of());
        return new DrawnTable(
                bare.seat(), bare.packing(), bare.packingHeight(), bare.x(), bare.y(), straps, bare.stops());
    }

    DrawnDevice device(DeviceHolding ink) {
        DrawnDevice bare = new DrawnDevice(
                ink.on(),
                Drawn.of(ink.device(), () -> new DevicePencil(drafting).choose(ink.on(), lying)),
                Drawn.of(ink.x(), () -> drafting.length(0)),
                Drawn.of(ink.y(), () -> drafting.length(0)),
                ink.angle(),
                List.of(),
                ink.stops());
        List<DrawnStrap> straps =
                heights(bare).map(heights -> straps(ink, bare, heights)).orElse(List.of());
        return new DrawnDevice(bare.on(), bare.device(), bare.x(), bare.y(), bare.angle(), straps, bare.stops());
    }

    private TableHolding.Seat seat(boolean bar, TablePacking packing) {
        double diameter = lying.across().nominal().inside();
        if (bar && TableSlots.suits(diameter, table())) {
            return TableHolding.Seat.T_SLOT;
        }
        return packing.wanted() ? TableHolding.Seat.PACKING : TableHolding.Seat.TABLE;
    }

    private double slot() {
        return TableSlots.nearest(0, table());
    }

    private MachineTable table() {
        return drafting.rows().machine().table();
    }

    private Optional<Heights> heights(DrawnHolding bare) {
        return Seats.of(drafting.job(), laid, bare, drafting.rows());
    }

    private List<DrawnStrap> straps(List<Strapping> ink, Heights heights, StrapGround ground) {
        return new StrapPencil(drafting).straps(ink, ground, heights);
    }

    private List<DrawnStrap> straps(DeviceHolding ink, DrawnDevice bare, Heights heights) {
        return switch (ink.on()) {
            case V_BLOCKS -> straps(ink.straps(), heights, onTable(heights, true));
            case SET_UP_BLOCKS -> straps(ink.straps(), heights, onTable(heights, false));
            case ROTARY_TABLE, FIXTURE_PLATE -> straps(ink.straps(), heights, onDevice(bare, heights));
            case ANGLE_PLATE -> new StrapPencil(drafting).onFace(ink.straps(), heights);
            case COLLET_BLOCK, DIVIDING_HEAD, MAGNETIC_CHUCK ->
                ink.straps().isEmpty() ? List.of() : straps(ink.straps(), heights, onTable(heights, false));
        };
    }

    private StrapGround onTable(Heights heights, boolean bar) {
        Point2 half = new Point2(table().length().inside() / 2, table().width().inside() / 2);
        return ground(heights, PlanBox.of(half.times(-1), half), TableSlots.all(table()), bar);
    }

    /** Straps go into the device's own slots or holes, as far out as two quarters of the part. */
    private StrapGround onDevice(DrawnDevice bare, Heights heights) {
        double middle = (heights.front() + heights.back()) / 2;
        double quarter = heights.depth() / 4;
        PlanBox on = new DevicePencil(drafting).face(bare);
        return ground(heights, on, List.of(middle - quarter, middle, middle + quarter), false);
    }

    private StrapGround ground(Heights heights, PlanBox on, List<Double> lines, boolean bar) {
        Point2 low = new Point2(heights.left(), heights.front());
        Point2 high = new Point2(heights.right(), heights.back());
        CutAreas areas = new CutAreas(lying);
        Point2 middle = low.plus(high).times(0.5);
        return new StrapGround(
                PlanBox.of(low, high),
                on,
                lines,
                at(middle, areas.of(drafting.on(laid.up()), feature -> true)),
                at(middle, areas.of(drafting.on(laid.up()), CutAreas::through)),
                bar);
    }

    private static List<PlanBox> at(Point2 middle, List<PlanBox> boxes) {
        return boxes.stream()
                .map(box -> new PlanBox(
                        box.xLow() + middle.x(),
                        box.yLow() + middle.y(),
                        box.xHigh() + middle.x(),
                        box.yHigh() + middle.y()))
                .toList();
    }
}

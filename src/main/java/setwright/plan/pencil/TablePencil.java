package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Side;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.job.Blank;
import setwright.job.DeviceHolding;
import setwright.job.Drawn;
import setwright.job.DrawnDevice;
import setwright.job.DrawnHolding;
import setwright.job.DrawnStrap;
import setwright.job.DrawnTable;
import setwright.job.FaceState;
import setwright.job.Feature;
import setwright.job.Hole;
import setwright.job.Plannable;
import setwright.job.SetUp;
import setwright.job.StrapField;
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
    private final SideFeatures features;
    private final Laid laid;
    private final Lying lying;

    TablePencil(Drafting drafting, SetUp setUp, Side up) {
        this.drafting = drafting;
        features = new SideFeatures(drafting, setUp, up);
        laid = new Laid(up, setUp.quarterTurns(), setUp.tilt());
        lying = Lying.of(drafting.block(), up, setUp.quarterTurns());
    }

    DrawnTable table(TableHolding ink) {
        boolean bar = Seats.barAlong(drafting.job().plan().blank(), laid);
        TablePacking packing = new TablePacking(drafting, features.cut(), StrapPencil.count(lying, bar));
        Drawn<TableHolding.Seat> seat = Drawn.of(ink.seat(), () -> seat(bar, packing));
        Packing under = switch (seat.value()) {
            case PACKING -> packing.choose(ink.packing());
            case JACKS -> packing.jack();
            case TABLE, T_SLOT -> Packing.NONE;
        };
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
        DrawnDevice bare = bare(ink);
        List<DrawnStrap> straps =
                heights(bare).map(heights -> straps(ink, bare, heights)).orElse(List.of());
        return bare.with(straps);
    }

    private DrawnDevice bare(DeviceHolding ink) {
        DeviceGear gear = new DeviceGear(
                drafting, lying, Seats.barAlong(drafting.job().plan().blank(), laid));
        Drawn<DeviceHolding.Fastening> fastening = Drawn.of(ink.fastening(), () -> DeviceGear.fastening(ink.on()));
        Drawn<String> device =
                Drawn.of(ink.device(), () -> new DevicePencil(drafting).choose(ink.on(), fastening.value(), lying));
        return new DrawnDevice(
                ink.on(),
                device,
                Drawn.of(ink.x(), () -> drafting.length(0)),
                Drawn.of(ink.y(), () -> drafting.length(0)),
                Drawn.of(ink.stance(), () -> gear.stance(ink.on())),
                Drawn.of(ink.vise(), () -> gear.vise(device.value())),
                fastening,
                Drawn.of(ink.gear(), () -> gear.gear(fastening.value())),
                Drawn.of(ink.tail(), () -> gear.tail(ink.on(), fastening)),
                Drawn.of(ink.located(), () -> gear.located(ink.on(), fastening)),
                ink.angle(),
                List.of(),
                ink.stops());
    }

    private TableHolding.Seat seat(boolean bar, TablePacking packing) {
        double diameter = lying.across().nominal().inside();
        if (bar && TableSlots.suits(diameter, table())) {
            return TableHolding.Seat.T_SLOT;
        }
        if (rough() && packing.jack() != Packing.NONE) {
            return TableHolding.Seat.JACKS;
        }
        return packing.wanted() ? TableHolding.Seat.PACKING : TableHolding.Seat.TABLE;
    }

    /** A casting, forging or weldment that stands on a rough side which nothing has cut before. */
    private boolean rough() {
        Side under = laid.up().opposite();
        FaceState state = drafting.block().faces().get(under);
        boolean clean = state == FaceState.MACHINED || state == FaceState.GROUND;
        return drafting.job().plan().blank().kind() == Blank.Kind.ROUGH_BODY
                && !clean
                && features.before().stream()
                        .noneMatch(feature -> feature.side() == under && feature.kind() == Feature.Kind.FACE);
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
        boolean strapped = switch (bare.fastening().value()) {
            case STRAPS, BOLTS -> true;
            case TAPE, GLUE, SANDWICH, CHUCK, COLLET, MANDREL, BETWEEN_CENTRES, MAGNET ->
                !ink.straps().isEmpty();
        };
        if (!strapped) {
            return List.of();
        }
        boolean bolted = bare.fastening().value() == DeviceHolding.Fastening.BOLTS;
        List<Strapping> asked = bolted && ink.straps().isEmpty() ? twoBolts() : ink.straps();
        return switch (ink.on()) {
            case V_BLOCKS -> straps(asked, heights, onTable(heights, true));
            case ROTARY_TABLE, FIXTURE_PLATE -> straps(asked, heights, onDevice(bare, heights));
            case ANGLE_PLATE -> new StrapPencil(drafting).onFace(asked, heights);
            case SET_UP_BLOCKS, COLLET_BLOCK, DIVIDING_HEAD, MAGNETIC_CHUCK ->
                straps(asked, heights, onTable(heights, false));
        };
    }

    /** Through holes of the part that are there, one at either end. */
    private static List<Strapping> twoBolts() {
        return List.of("strap1", "strap2").stream()
                .map(id -> StrapField.BY.write(Strapping.pencilled(id), Plannable.inked(Strapping.By.BOLT)))
                .toList();
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
                at(middle, areas.of(features.cut(), feature -> true)),
                at(middle, areas.of(features.cut(), feature -> feature.kind() != Feature.Kind.FACE)),
                at(middle, areas.of(features.cut(), CutAreas::through)),
                holes(middle),
                bar);
    }

    private List<Point2> holes(Point2 middle) {
        return features.before().stream()
                .filter(feature -> feature.kind() == Feature.Kind.HOLE && CutAreas.through(feature))
                .filter(feature -> feature.side() == laid.up()
                        || feature.side() == laid.up().opposite())
                .flatMap(feature -> lying.places((Hole) feature, laid.up()).stream())
                .map(middle::plus)
                .toList();
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

package setwright.plan.part;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Body;
import setwright.geometry.Prism;
import setwright.geometry.Role;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Point2;
import setwright.job.DrawnDevice;
import setwright.plan.Rows;
import setwright.shop.AnglePlate;
import setwright.shop.ColletBlock;
import setwright.shop.DividingHead;
import setwright.shop.FixturePlate;
import setwright.shop.MagneticChuck;
import setwright.shop.RotaryTable;
import setwright.shop.SetUpBlocks;
import setwright.shop.VBlocks;

/** A device on the table as simple bodies that hold it whole. */
final class DeviceBodies {
    private final DrawnDevice holding;
    private final Point2 middle;
    private final Heights heights;
    private final Rows rows;

    private DeviceBodies(DrawnDevice holding, Heights heights, Rows rows) {
        this.holding = holding;
        middle = new Point2(holding.x().value().inside(), holding.y().value().inside());
        this.heights = heights;
        this.rows = rows;
    }

    static List<Body> of(DrawnDevice holding, Heights heights, Rows rows) {
        DeviceBodies bodies = new DeviceBodies(holding, heights, rows);
        String id = holding.device().value();
        Optional<List<Body>> found = switch (holding.on()) {
            case V_BLOCKS -> rows.row(id, VBlocks.class).map(bodies::vees);
            case ANGLE_PLATE -> rows.row(id, AnglePlate.class).map(bodies::anglePlate);
            case FIXTURE_PLATE -> rows.row(id, FixturePlate.class).map(bodies::plate);
            case SET_UP_BLOCKS -> rows.row(id, SetUpBlocks.class).map(bodies::blocks);
            case COLLET_BLOCK -> rows.row(id, ColletBlock.class).map(bodies::colletBlock);
            case ROTARY_TABLE -> rows.row(id, RotaryTable.class).map(bodies::rotary);
            case DIVIDING_HEAD -> rows.row(id, DividingHead.class).map(bodies::head);
            case MAGNETIC_CHUCK -> rows.row(id, MagneticChuck.class).map(bodies::magnet);
        };
        return found.map(own -> Stream.concat(own.stream(), bodies.gear().bodies().stream())
                        .toList())
                .orElse(List.of());
    }

    private GearBodies gear() {
        return new GearBodies(holding, heights, rows);
    }

    /** One under either quarter of the bar. */
    private List<Body> vees(VBlocks row) {
        double length = row.length().inside();
        double width = row.width().inside();
        double top = row.height().inside();
        return List.of(
                slab("left V-block", Role.PACKING, quarter(-1), length, width, 0, top),
                slab("right V-block", Role.PACKING, quarter(1), length, width, 0, top));
    }

    private List<Body> blocks(SetUpBlocks row) {
        double width = row.sizes().get(1).inside();
        double length = row.sizes().get(2).inside();
        return List.of(
                slab("left block", Role.PACKING, quarter(-1), width, length, 0, heights.partBottom()),
                slab("right block", Role.PACKING, quarter(1), width, length, 0, heights.partBottom()));
    }

    private Point2 quarter(int side) {
        return new Point2(
                (heights.left() + heights.right()) / 2 + side * heights.length() / 4,
                (heights.front() + heights.back()) / 2);
    }

    /** Its face against the back of the part, its foot away to the column. */
    private List<Body> anglePlate(AnglePlate row) {
        double half = row.faceWidth().inside() / 2;
        double back = heights.back();
        double thick = row.thickness().inside();
        Point2 left = new Point2(middle.x() - half, back);
        return List.of(
                Fixtures.box(
                        "angle plate face",
                        Role.ANGLE_PLATE,
                        left,
                        new Point2(middle.x() + half, back + thick),
                        0,
                        row.faceHeight().inside()),
                Fixtures.box(
                        "angle plate foot",
                        Role.ANGLE_PLATE,
                        left,
                        new Point2(middle.x() + half, back + row.legDepth().inside()),
                        0,
                        thick));
    }

    /** A board may be run into; in a vise it has the jaws beside it. */
    private List<Body> plate(FixturePlate row) {
        double width = row.width().inside();
        double top = PlateStand.top(row, holding, rows);
        Body plate = slab(
                row.madeOf().board() ? "sacrificial plate" : "fixture plate",
                row.madeOf().board() ? Role.BOARD : Role.FIXTURE,
                middle,
                row.length().inside(),
                width,
                top - row.thickness().inside(),
                top);
        return Stream.concat(Stream.of(plate), vise(middle.y() - width / 2).stream())
                .toList();
    }

    private List<Body> vise(double front) {
        return rows.vise(holding.vise().value())
                .map(found -> ViseBodies.vise(found, JawPlates.own(found), front, heights))
                .orElse(List.of());
    }

    private List<Body> magnet(MagneticChuck row) {
        return List.of(slab(
                "magnetic chuck",
                Role.FIXTURE,
                middle,
                row.length().inside(),
                row.width().inside(),
                0,
                row.height().inside()));
    }

    private List<Body> rotary(RotaryTable row) {
        double radius = row.diameter().inside() / 2;
        double thick = row.heightLying().inside();
        var centre = row.centreStanding();
        if (holding.upright() && centre != null) {
            return List.of(slab("rotary table", Role.FIXTURE, middle, thick, 2 * radius, 0, centre.inside() + radius));
        }
        return List.of(new Body("rotary table", Role.FIXTURE, new UprightCylinder(middle, radius, 0, thick)));
    }

    private List<Body> head(DividingHead row) {
        double half = row.swing().inside() / 2;
        double length = DeviceSeat.HEAD_LENGTH;
        double top = row.centreHeight().inside() + half;
        return List.of(slab("dividing head", Role.FIXTURE, middle, length, 2 * half, 0, top));
    }

    /** The block in its vise: standing round the bar, or lying at its left end. */
    private List<Body> colletBlock(ColletBlock row) {
        double flats = row.acrossFlats().inside();
        double length = row.length().inside();
        boolean upright = Math.abs(heights.partBottom() - heights.bed()) < 1e-9;
        double along = upright ? flats : length;
        Body block = slab(
                "collet block",
                Role.FIXTURE,
                middle,
                along,
                flats,
                heights.bed(),
                heights.bed() + (upright ? length : flats));
        return Stream.concat(vise(middle.y() - flats / 2).stream(), Stream.of(block))
                .toList();
    }

    private static Body slab(
            String name, Role role, Point2 middle, double length, double width, double low, double high) {
        Point2 half = new Point2(length / 2, width / 2);
        return new Body(name, role, Prism.box(middle.minus(half), middle.plus(half), low, high));
    }
}

package setwright.plan.part;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Body;
import setwright.geometry.Prism;
import setwright.geometry.Role;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Point2;
import setwright.job.DeviceHolding;
import setwright.job.DrawnDevice;
import setwright.plan.Rows;
import setwright.shop.FixturePlate;
import setwright.shop.Tailstock;
import setwright.shop.WorkChuck;

/** What holds a part on a device and is a body of its own: a chuck, a tailstock, the upper board of a sandwich. */
record GearBodies(DrawnDevice holding, Heights heights, Rows rows) {
    /** A tailstock goes on so far over its centre, mm (common practice). */
    private static final double OVER_CENTRE = 20;

    /** A jaw as a round that holds its end, and the height of its step over the body of the chuck, mm (common practice). */
    private static final double JAW = 12;

    private static final double STEP = 10;

    List<Body> bodies() {
        List<Body> bodies = new ArrayList<>();
        rows.row(holding.gear().value(), WorkChuck.class).ifPresent(row -> bodies.addAll(chuck(row)));
        rows.row(holding.tail().value(), Tailstock.class).ifPresent(row -> bodies.add(tailstock(row)));
        if (holding.fastening().value() == DeviceHolding.Fastening.SANDWICH) {
            rows.row(holding.gear().value(), FixturePlate.class).ifPresent(row -> bodies.add(board(row)));
        }
        return bodies;
    }

    /** Its body below the steps that the part sits on, and the jaws round the part; round a level bar one block. */
    private List<Body> chuck(WorkChuck row) {
        double radius = row.diameter().inside() / 2;
        if (holding.upright()) {
            double end = heights.left() + row.jawDepth().inside();
            return List.of(slab(
                    "chuck",
                    Role.FIXTURE,
                    new Point2(end - row.height().inside(), axisY() - radius),
                    new Point2(end, axisY() + radius),
                    axisZ() - radius,
                    axisZ() + radius));
        }
        Point2 middle =
                new Point2(holding.x().value().inside(), holding.y().value().inside());
        double foot = heights.jawTop() - row.height().inside();
        double top = heights.partBottom() - STEP;
        List<Body> bodies = new ArrayList<>();
        bodies.add(new Body("chuck", Role.FIXTURE, new UprightCylinder(middle, radius, foot, Math.max(foot, top))));
        for (int i = 0; i < row.jaws(); i++) {
            double angle = Math.PI / 2 + 2 * Math.PI * i / row.jaws();
            Point2 out = new Point2(StrictMath.cos(angle), StrictMath.sin(angle));
            Point2 at = middle.plus(out.times(heights.depth() / 2 + JAW));
            bodies.add(new Body(
                    "chuck jaw " + (i + 1), Role.FIXTURE, new UprightCylinder(at, JAW, top, heights.jawTop())));
        }
        return bodies;
    }

    /** Its centre in the right end of the part. */
    private Body tailstock(Tailstock row) {
        double half = row.width().inside() / 2;
        double from = heights.right();
        return slab(
                "tailstock",
                Role.FIXTURE,
                new Point2(from, axisY() - half),
                new Point2(from + row.length().inside(), axisY() + half),
                0,
                axisZ() + OVER_CENTRE);
    }

    private Body board(FixturePlate row) {
        Point2 half = new Point2(row.length().inside() / 2, row.width().inside() / 2);
        Point2 middle = new Point2((heights.left() + heights.right()) / 2, axisY());
        return slab(
                "upper board",
                Role.BOARD,
                middle.minus(half),
                middle.plus(half),
                heights.startTop(),
                heights.startTop() + row.thickness().inside());
    }

    private double axisY() {
        return (heights.front() + heights.back()) / 2;
    }

    private double axisZ() {
        return (heights.partBottom() + heights.startTop()) / 2;
    }

    private static Body slab(String name, Role role, Point2 low, Point2 high, double bottom, double top) {
        return new Body(name, role, Prism.box(low, high, Math.min(bottom, top), top));
    }
}

package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import setwright.Rounds;
import setwright.geometry.plane.Point2;

/** A set-up with any number of operations in turn: passes, slots, holes and ramps, over a block, a shaft and their clamps. */
final class ManyOperations {
    /** An operation: its tool, its way and what stands there. */
    record One(ToolStack tool, ToolPath path) {}

    final List<One> operations = new ArrayList<>();
    final List<Body> bodies;

    ManyOperations(int count) {
        bodies = bodies();
        RandomGenerator random = Rounds.random(24);
        for (int i = 0; i < count; i++) {
            operations.add(new One(tool(4 + random.nextInt(12)), path(i % 4, random)));
        }
    }

    /** The exact clearance of all: of the whole tool from what stands there, and of what is above the cutter from the part. */
    double exact() {
        double sum = 0;
        List<Body> fixtures = bodies.subList(0, bodies.size() - 1);
        for (One one : operations) {
            ToolStack above = one.tool().only(Role.HOLDER, Role.SPINDLE_NOSE, Role.QUILL);
            sum += Clearance.all(one.tool(), one.path(), fixtures).get(0).clearance();
            sum += Clearance.all(above, one.path(), bodies.subList(fixtures.size(), bodies.size()))
                    .get(0)
                    .clearance();
        }
        return sum;
    }

    private static ToolStack tool(double radius) {
        return ToolStack.of(
                new Section("cutter", Role.CUTTER, Profile.cylinder(0, 30, radius)),
                new Section("shank", Role.SHANK, Profile.cylinder(30, 45, radius)),
                new Section("nut", Role.HOLDER, new Profile(45, 55, 15, 20)),
                new Section("chuck", Role.HOLDER, Profile.cylinder(55, 105, 22)),
                new Section("nose", Role.SPINDLE_NOSE, Profile.cylinder(105, 125, 30)),
                new Section("quill", Role.QUILL, Profile.cylinder(125, 250, 43)));
    }

    private static ToolPath path(int kind, RandomGenerator random) {
        double height = 112 + 10 * random.nextDouble();
        ToolPath path = ToolPath.from(new Point3(-70, -20, 150));
        return switch (kind) {
            case 0 ->
                path.toHeight(Move.Kind.APPROACH, height)
                        .across(Move.Kind.CUT, new Point2(70, -20))
                        .across(Move.Kind.CUT, new Point2(70, 10))
                        .across(Move.Kind.CUT, new Point2(-70, 10));
            case 1 ->
                path.across(Move.Kind.CROSS, new Point2(30, 0))
                        .toHeight(Move.Kind.PLUNGE, height)
                        .fullTurn(Move.Kind.CUT, new Point2(20, 0), true)
                        .toHeight(Move.Kind.RETRACT, 150);
            case 2 ->
                path.across(Move.Kind.CROSS, new Point2(-20, -10))
                        .toHeight(Move.Kind.PLUNGE, 80)
                        .toHeight(Move.Kind.RETRACT, 150)
                        .across(Move.Kind.CROSS, new Point2(20, 10))
                        .toHeight(Move.Kind.PLUNGE, 80)
                        .toHeight(Move.Kind.RETRACT, 150);
            default ->
                path.to(Move.Kind.APPROACH, new Point3(0, 0, height)).to(Move.Kind.RUN_OFF, new Point3(60, 5, 140));
        };
    }

    private static List<Body> bodies() {
        List<Body> bodies = new ArrayList<>();
        add(bodies, "table", Role.TABLE, box(-600, -115, 600, 115, -60, 0));
        add(bodies, "bed", Role.VISE_BED, box(-76, -150, 76, 100, 0, 40));
        add(bodies, "solid jaw", Role.SOLID_JAW, box(-76, 40, 76, 64, 40, 84));
        add(bodies, "moving jaw", Role.MOVING_JAW, box(-76, -64, 76, -40, 40, 84));
        add(bodies, "parallel", Role.PARALLEL, box(-75, 20, 75, 26, 40, 70));
        add(bodies, "stud", Role.STUD, new UprightCylinder(new Point2(110, 20), 6, 0, 120));
        add(bodies, "screw", Role.VISE_SCREW, Turned.cylinder(new Point3(0, -150, 25), new Point3(0, -60, 25), 12));
        add(bodies, "shaft", Role.STOP, Turned.cylinder(new Point3(-60, 78, 100), new Point3(60, 78, 100), 9));
        add(
                bodies,
                "strap",
                Role.STRAP,
                box(-10, 0, 10, 60, 0, 12)
                        .moved(Motion.aboutX(Point3.ORIGIN, 0.05).then(Motion.shift(new Point3(100, 20, 95)))));
        Stock stock =
                Stock.of(box(-41, -38, 41, 38, 70, 110)).less(new UprightCylinder(new Point2(20, 0), 14, 90, 111));
        add(
                bodies,
                "part",
                Role.PART,
                stock.less(box(-50, -30, 50, -10, 100, 111)).solid());
        return bodies;
    }

    private static void add(List<Body> bodies, String name, Role role, Solid solid) {
        bodies.add(new Body(name, role, solid));
    }

    private static Prism box(double x1, double y1, double x2, double y2, double low, double high) {
        return Prism.box(new Point2(x1, y1), new Point2(x2, y2), low, high);
    }
}

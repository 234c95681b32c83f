package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/** Five operations of six tool sections and twenty moves each, among ten bodies with the drilled stock among them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ClearanceBench {
    private static final Point2[] HOLES = {
        new Point2(-28, -15), new Point2(28, -15), new Point2(28, 15), new Point2(-28, 15), new Point2(0, 0)
    };

    private final ToolStack tool = tool();
    private final ToolPath holes = holes();
    private final ToolPath passes = passes();
    private final ToolPath ramps = ramps();
    private final Stock stock = drilled();
    private final List<Body> bodies = bodies(stock);

    @Benchmark
    public double five_operations() {
        double least = Clearance.all(tool, passes, bodies).get(0).clearance();
        for (int i = 0; i < 4; i++) {
            least += Clearance.all(tool, holes, bodies).get(0).clearance();
        }
        return least;
    }

    @Benchmark
    public double twenty_slanted_moves_into_the_part() {
        return Clearance.all(tool, ramps, bodies).get(0).clearance();
    }

    @Benchmark
    public Union stock_made_and_shown() {
        return drilled().solid();
    }

    @Benchmark
    public double volume_of_the_stock() {
        return stock.bulk().volume();
    }

    private static ToolStack tool() {
        return ToolStack.of(
                new Section("point", Role.CUTTER, new Profile(0, 2, 0, 3.4)),
                new Section("drill", Role.CUTTER, Profile.cylinder(2, 60, 3.4)),
                new Section("jaws", Role.HOLDER, new Profile(60, 75, 9, 16)),
                new Section("chuck", Role.HOLDER, Profile.cylinder(75, 130, 22)),
                new Section("nose", Role.SPINDLE_NOSE, Profile.cylinder(130, 150, 30)),
                new Section("quill", Role.QUILL, Profile.cylinder(150, 250, 43)));
    }

    private static ToolPath holes() {
        ToolPath path = ToolPath.from(new Point3(0, 0, 150));
        for (Point2 hole : HOLES) {
            path = path.across(Move.Kind.CROSS, hole)
                    .toHeight(Move.Kind.APPROACH, 112)
                    .toHeight(Move.Kind.CUT, 64)
                    .toHeight(Move.Kind.RETRACT, 150);
        }
        return path;
    }

    private static ToolPath passes() {
        ToolPath path = ToolPath.from(new Point3(-80, -30, 108));
        for (int i = 0; i < 10; i++) {
            path = path.across(Move.Kind.CUT, new Point2(i % 2 == 0 ? 80 : -80, -30 + 6 * i))
                    .across(Move.Kind.CROSS, new Point2(i % 2 == 0 ? 80 : -80, -24 + 6 * i));
        }
        return path;
    }

    private static ToolPath ramps() {
        ToolPath path = ToolPath.from(new Point3(-60, -20, 150));
        for (int i = 0; i < 20; i++) {
            path = path.to(Move.Kind.CUT, new Point3(i % 2 == 0 ? 60 : -60, 20 - 2 * i, 145 - 3 * i));
        }
        return path;
    }

    private static Stock drilled() {
        Prism block = Prism.box(new Point2(-41, -26), new Point2(41, 26), 70, 110);
        Stock stock = Stock.of(block).less(Prism.box(new Point2(-60, -60), new Point2(60, 60), 108, 112));
        for (Point2 hole : HOLES) {
            stock = stock.less(new UprightCylinder(hole, 5, 104, 112).pointedDown(5))
                    .less(new UprightCylinder(hole, 3.4, 66, 112).pointedDown(2));
        }
        return stock.less(new UprightCylinder(new Point2(0, 0), 5.9, 60, 112))
                .less(new UprightCylinder(new Point2(0, 0), 6, 60, 112));
    }

    private static List<Body> bodies(Stock stock) {
        List<Body> bodies = new ArrayList<>();
        bodies.add(box("table", Role.TABLE, new Box(plan(-600, -115, 600, 115), -60, 0)));
        bodies.add(box("bed", Role.VISE_BED, new Box(plan(-76, -150, 76, 100), 0, 40)));
        bodies.add(box("solid jaw", Role.SOLID_JAW, new Box(plan(-76, 26, 76, 50), 40, 84)));
        bodies.add(box("moving jaw", Role.MOVING_JAW, new Box(plan(-76, -76, 76, -26), 40, 84)));
        bodies.add(box("back parallel", Role.PARALLEL, new Box(plan(-75, 20, 75, 26), 40, 70)));
        bodies.add(box("front parallel", Role.PARALLEL, new Box(plan(-75, -26, 75, -20), 40, 70)));
        bodies.add(new Body("stop rod", Role.STOP, new UprightCylinder(new Point2(-90, 60), 6, 40, 95)));
        bodies.add(new Body("stud", Role.STUD, new UprightCylinder(new Point2(110, 20), 6, 0, 80)));
        bodies.add(box("stop", Role.STOP, new Box(plan(-95, -5, -41, 5), 75, 90)));
        bodies.add(new Body("part", Role.PART, stock.solid()));
        return bodies;
    }

    private static PlanBox plan(double x1, double y1, double x2, double y2) {
        return new PlanBox(x1, y1, x2, y2);
    }

    private static Body box(String name, Role role, Box box) {
        return new Body(name, role, box.solid());
    }
}

package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.geometry.plane.Straight;

/** What cuts take away, against closed forms and against a count of small cubes. */
class VolumeTest {
    private static final Point3 SIZE = new Point3(80, 50, 40);
    private static final Stock BLOCK = Stock.block(SIZE);
    private static final double WHOLE = 80.0 * 50 * 40;

    private static double gone(Stock stock) {
        return WHOLE - stock.bulk().volume();
    }

    private static void takes(Stock stock, double closedForm) {
        assertThat(gone(stock)).isCloseTo(closedForm, within(1e-6 * closedForm));
    }

    @Test
    void a_face_takes_length_times_depth_times_thickness() {
        takes(BLOCK.less(Prism.box(p(-9, -9), p(99, 99), 38.5, 41)), 80 * 50 * 1.5);
    }

    /** A closed slot 30 over all and 10 wide: 20 x 10 and two half circles. */
    @Test
    void a_closed_slot_takes_its_oblong() {
        Region oblong = Region.of(Outline.slot(p(20, 25), p(40, 25), 5));

        takes(BLOCK.less(new Prism(oblong, 32, 41)), 8 * (20 * 10 + 25 * Math.PI));
    }

    /** A pocket 40 x 24 with corners of 6: 40 x 24 less (4 - π) 36. */
    @Test
    void a_pocket_with_round_corners_takes_its_rectangle_less_the_corners() {
        takes(BLOCK.less(new Prism(pocket(), 28, 41)), 12 * (40 * 24 - (4 - Math.PI) * 36));
    }

    /** 8 in diameter, 22 deep to its shoulder, its point of 118 degrees below. */
    @Test
    void a_drilled_hole_takes_its_cylinder_and_its_point() {
        double point = 4 / Math.tan(Math.toRadians(59));

        takes(
                BLOCK.less(new UprightCylinder(p(30, 20), 4, 18, 41).pointedDown(point)),
                Math.PI * 16 * (22 + point / 3));
    }

    /** A chamfer of 2 x 45 degrees along 80: 80 x 2 x 2 / 2. */
    @Test
    void a_chamfer_takes_its_triangle_times_its_length() {
        List<Point3> corners = List.of(
                new Point3(-1, -2, 41 - 1 + 2),
                new Point3(81, -2, 42),
                new Point3(-1, -2, 36),
                new Point3(81, -2, 36),
                new Point3(-1, 4, 42),
                new Point3(81, 4, 42));

        takes(BLOCK.less(new Polyhedron(corners)), 80 * 2 * 2 / 2.0);
    }

    /** Two slots of 10 x 8 crossing: what both take counts once. */
    @Test
    void slots_that_cross_take_their_crossing_once() {
        Stock stock = BLOCK.less(Prism.box(p(-1, 20), p(81, 30), 32, 41)).less(Prism.box(p(35, -1), p(45, 51), 32, 41));
        double closedForm = 8 * (10 * 80 + 10 * 50 - 100);

        assertThat(gone(stock)).isCloseTo(closedForm, within(1e-4 * closedForm));
    }

    /** Two bores of equal radius that cross square take the solid of Archimedes, 16 r³ / 3, once. */
    @Test
    void bores_of_one_radius_that_cross_take_the_solid_of_archimedes_once() {
        Stock stock = BLOCK.less(Turned.cylinder(new Point3(-1, 25, 20), new Point3(81, 25, 20), 6))
                .less(Turned.cylinder(new Point3(40, -1, 20), new Point3(40, 51, 20), 6));
        double closedForm = Math.PI * 36 * (80 + 50) - 16.0 / 3 * 216;

        assertThat(gone(stock)).isCloseTo(closedForm, within(1e-4 * closedForm));
    }

    @Test
    void a_lying_bar_has_the_volume_of_its_cylinder_and_a_flat_takes_its_segment() {
        Stock bar = Stock.of(Turned.cylinder(new Point3(0, 0, 20), new Point3(100, 0, 20), 20));
        double angle = 2 * Math.acos(16 / 20.0);
        double segment = 400 * (angle - Math.sin(angle)) / 2;

        assertThat(bar.bulk().volume()).isCloseTo(Math.PI * 400 * 100, within(1e-6 * 125_000));
        Stock flat = bar.less(Prism.box(p(-1, -30), p(30, 30), 36, 50));
        assertThat(bar.bulk().volume() - flat.bulk().volume()).isCloseTo(30 * segment, within(1e-6 * 30 * segment));
    }

    @Test
    void a_countersink_on_a_side_takes_as_much_as_upright() {
        Placement onFront = Placement.resting(new Attitude(Side.BACK, 0), SIZE, Point3.ORIGIN);
        Stock sunk = BLOCK.less(new UprightCone(p(40, 25), new Profile(35, 40, 1, 6)));
        double closedForm = Math.PI * 5 / 3 * (1 + 6 + 36);

        takes(sunk, closedForm);
        assertThat(gone(sunk.placed(onFront))).isCloseTo(closedForm, within(1e-3 * closedForm));
    }

    /** A block with cuts that meet in odd ways, and the plain inequalities of what is gone. */
    private record Odd(String name, Stock stock, Gone gone) {
        interface Gone {
            boolean at(double x, double y, double z);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Odd> odd() {
        UprightCylinder hole = new UprightCylinder(p(30, 25), 9, 12, 41);
        Odd.Gone inHole = (x, y, z) -> Math.hypot(x - 30, y - 25) < 9 && z > 12;
        Turned cross = Turned.cylinder(new Point3(-1, 22, 21), new Point3(81, 22, 21), 7);
        Odd.Gone inCross = (x, y, z) -> Math.hypot(y - 22, z - 21) < 7;
        Turned tilted = Turned.cylinder(new Point3(20, 25, -10), new Point3(60, 25, 50), 6);
        Odd.Gone inTilted = (x, y, z) -> {
            double along = ((x - 20) * 40 + (z + 10) * 60) / Math.hypot(40, 60);
            double squared = (x - 20) * (x - 20) + (y - 25) * (y - 25) + (z + 10) * (z + 10) - along * along;
            return squared < 36;
        };
        UprightCone cone = new UprightCone(p(36, 25), new Profile(20, 40, 2, 14));
        Odd.Gone inCone = (x, y, z) -> z > 20 && Math.hypot(x - 36, y - 25) < 2 + 12 * (z - 20) / 20;
        Prism slot = Prism.box(p(-1, 18), p(81, 33), 27, 41);
        Odd.Gone inSlot = (x, y, z) -> y > 18 && y < 33 && z > 27;
        Polyhedron wedge = new Polyhedron(List.of(
                new Point3(20, -1, 40),
                new Point3(60, -1, 40),
                new Point3(40, -1, 10),
                new Point3(20, 51, 40),
                new Point3(60, 51, 40),
                new Point3(40, 51, 10)));
        Odd.Gone inWedge = (x, y, z) -> z > 10 && Math.abs(x - 40) < 20 * (z - 10) / 30;
        Prism round = new Prism(pocket(), 22, 41);
        Odd.Gone inRound = (x, y, z) -> {
            double dx = Math.max(0, Math.abs(x - 40) - 14);
            double dy = Math.max(0, Math.abs(y - 25) - 6);
            return z > 22 && Math.hypot(dx, dy) < 6;
        };
        return List.of(
                odd("a hole into a cross hole", hole, inHole, cross, inCross),
                odd("a hole with a countersink beside it", hole, inHole, cone, inCone),
                odd("a hole at the edge of a slot", hole, inHole, slot, inSlot),
                odd("a cross hole under a slot", cross, inCross, slot, inSlot),
                odd("a slanted hole through a slot", tilted, inTilted, slot, inSlot),
                odd("a slanted hole through a cross hole", tilted, inTilted, cross, inCross),
                odd("a groove over a hole", wedge, inWedge, hole, inHole),
                odd("a groove over a cross hole", wedge, inWedge, cross, inCross),
                odd("a pocket over a slanted hole", round, inRound, tilted, inTilted),
                odd("a countersink in a pocket", round, inRound, cone, inCone));
    }

    private static Odd odd(String name, Solid first, Odd.Gone inFirst, Solid second, Odd.Gone inSecond) {
        return new Odd(name, BLOCK.less(first).less(second), (x, y, z) -> inFirst.at(x, y, z) || inSecond.at(x, y, z));
    }

    /** Cubes of 0.5 mm, each counted by its middle. */
    @ParameterizedTest
    @MethodSource("odd")
    void odd_cuts_take_what_a_count_of_small_cubes_says(Odd odd) {
        double edge = 0.5;
        long count = IntStream.range(0, 160)
                .mapToLong(i -> column(odd, (i + 0.5) * edge, edge))
                .sum();
        double counted = count * edge * edge * edge;

        assertThat(gone(odd.stock())).isCloseTo(counted, within(0.002 * counted));
    }

    private static long column(Odd odd, double x, double edge) {
        long count = 0;
        for (int j = 0; j < 100; j++) {
            for (int k = 0; k < 80; k++) {
                count += odd.gone().at(x, (j + 0.5) * edge, (k + 0.5) * edge) ? 1 : 0;
            }
        }
        return count;
    }

    /** 40 x 24 about the middle of the top, corners of 6. */
    private static Region pocket() {
        Point2[] on = {p(26, 13), p(54, 13), p(60, 19), p(60, 31), p(54, 37), p(26, 37), p(20, 31), p(20, 19)};
        List<Edge> edges = List.of(
                new Straight(on[0], on[1]),
                new Arc(on[1], on[2], p(54, 19), true),
                new Straight(on[2], on[3]),
                new Arc(on[3], on[4], p(54, 31), true),
                new Straight(on[4], on[5]),
                new Arc(on[5], on[6], p(26, 31), true),
                new Straight(on[6], on[7]),
                new Arc(on[7], on[0], p(26, 19), true));
        return Region.of(new Outline(edges));
    }

    private static Point2 p(double x, double y) {
        return new Point2(x, y);
    }
}

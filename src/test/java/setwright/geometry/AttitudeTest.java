package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.Rounds;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

class AttitudeTest {
    private static final Point3 BLANK = new Point3(82, 52, 40);

    @ParameterizedTest
    @EnumSource
    void right_up_and_outward_of_a_side_are_right_handed(Side side) {
        assertThat(cross(side.u(), side.v())).isEqualTo(side.outward());
        assertThat(side.opposite().outward()).isEqualTo(side.outward().opposite());
        assertThat(side.opposite().opposite()).isEqualTo(side);
    }

    @Test
    void the_upright_sides_are_seen_with_z_up_as_one_walks_round_the_part() {
        assertThat(Side.FRONT.place(new Point3(10, 5, 2), BLANK)).isEqualTo(new Point3(10, 2, 5));
        assertThat(Side.RIGHT.place(new Point3(10, 5, 2), BLANK)).isEqualTo(new Point3(80, 10, 5));
        assertThat(Side.BACK.place(new Point3(10, 5, 2), BLANK)).isEqualTo(new Point3(72, 50, 5));
        assertThat(Side.LEFT.place(new Point3(10, 5, 2), BLANK)).isEqualTo(new Point3(2, 42, 5));
        assertThat(Side.TOP.place(new Point3(10, 5, 2), BLANK)).isEqualTo(new Point3(10, 5, 38));
        assertThat(Side.BOTTOM.place(new Point3(10, 5, 2), BLANK)).isEqualTo(new Point3(10, 47, 2));
    }

    @Test
    void a_place_seen_on_a_side_is_the_place_that_was_put_there() {
        Rounds.each(21, (random, round) -> {
            Side side = Side.values()[random.nextInt(6)];
            Point3 seen = new Point3(random.nextInt(50), random.nextInt(50), random.nextInt(20));

            assertThat(side.seen(side.place(seen, BLANK), BLANK).distance(seen)).isZero();
        });
    }

    @ParameterizedTest
    @EnumSource
    void with_a_side_up_its_u_lies_along_the_table_and_its_v_to_the_column(Side up) {
        Attitude attitude = new Attitude(up, 0);

        assertThat(attitude.sideFacing(Heading.PLUS_Z)).isEqualTo(up);
        assertThat(attitude.toTable(up.u().step(1))).isEqualTo(new Point3(1, 0, 0));
        assertThat(attitude.toTable(up.v().step(1))).isEqualTo(new Point3(0, 1, 0));
        assertThat(attitude.size(BLANK)).isEqualTo(up.size(BLANK));
    }

    @Test
    void a_quarter_turn_anticlockwise_brings_the_right_side_to_the_column() {
        Attitude turned = new Attitude(Side.TOP, 1);

        assertThat(turned.facing(Side.RIGHT)).isEqualTo(Heading.PLUS_Y);
        assertThat(turned.facing(Side.FRONT)).isEqualTo(Heading.PLUS_X);
        assertThat(turned.sideFacing(Heading.MINUS_Y)).isEqualTo(Side.LEFT);
        assertThat(turned.size(BLANK)).isEqualTo(new Point3(52, 82, 40));
        assertThat(new Attitude(Side.TOP, -3)).isEqualTo(turned);
    }

    @Test
    void rolled_over_onto_its_top_the_front_faces_the_column() {
        Attitude rolled = new Attitude(Side.BOTTOM, 0);

        assertThat(rolled.facing(Side.FRONT)).isEqualTo(Heading.PLUS_Y);
        assertThat(rolled.facing(Side.LEFT)).isEqualTo(Heading.MINUS_X);
    }

    @Test
    void a_resting_blank_fills_its_box_from_the_corner_it_rests_on() {
        Rounds.each(22, (random, round) -> {
            Attitude attitude = attitude(random);
            Point3 low = new Point3(random.nextInt(400), random.nextInt(200), random.nextInt(100));

            Placement placement = Placement.resting(attitude, BLANK, low);
            Box box = placement.of(Box.of(Point3.ORIGIN, BLANK));

            assertThat(box.low().distance(low)).isZero();
            assertThat(box.size().distance(attitude.size(BLANK))).isZero();
        });
    }

    @Test
    void distances_and_handedness_stay_and_there_and_back_is_nothing() {
        Rounds.each(23, (random, round) -> {
            Placement placement = new Placement(attitude(random), new Point3(7, -3, 11));
            Point3 a = point(random);
            Point3 b = point(random);

            assertThat(placement.toPart(placement.toTable(a)).distance(a)).isZero();
            assertThat(placement.toTable(a).distance(placement.toTable(b))).isEqualTo(a.distance(b));
            Attitude attitude = placement.attitude();
            assertThat(cross(attitude.tableX(), attitude.tableY())).isEqualTo(attitude.tableZ());
        });
    }

    @Test
    void one_motion_after_another_is_one_motion_and_a_motion_back_undoes_it() {
        Rounds.each(25, (random, round) -> {
            Placement first = new Placement(attitude(random), point(random));
            Placement next = new Placement(attitude(random), point(random));
            Point3 part = point(random);

            assertThat(first.then(next).toTable(part).distance(next.toTable(first.toTable(part))))
                    .isZero();
            assertThat(first.inverse().toTable(first.toTable(part)).distance(part))
                    .isZero();
            assertThat(first.then(first.inverse()).attitude()).isEqualTo(Attitude.AS_DRAWN);
        });
    }

    @Test
    void a_turned_solid_holds_the_turned_places() {
        Region drilled =
                Region.rectangle(Point2.ORIGIN, new Point2(82, 52)).minus(Region.circle(new Point2(20, 10), 6));
        Prism plate = new Prism(drilled, 0, 40);
        Rounds.each(24, (random, round) -> {
            Side up = random.nextBoolean() ? Side.TOP : Side.BOTTOM;
            Placement placement =
                    Placement.resting(new Attitude(up, random.nextInt(4)), BLANK, new Point3(100, 50, 30));
            Prism placed = (Prism) plate.placed(placement);
            for (int i = 0; i < 20; i++) {
                Point3 part = new Point3(
                        90 * random.nextDouble() - 4, 60 * random.nextDouble() - 4, 50 * random.nextDouble() - 5);
                Point3 table = placement.toTable(part);

                assertThat(holds(placed, table)).isEqualTo(holds(plate, part));
            }
        });
    }

    @Test
    void a_cone_turned_over_stands_on_its_point() {
        Placement over = Placement.resting(new Attitude(Side.BOTTOM, 0), BLANK, Point3.ORIGIN);
        Single cone = new UprightCone(new Point2(20, 10), new Profile(38, 40, 3, 5)).placed(over);

        assertThat(cone).isEqualTo(new UprightCone(new Point2(20, 42), new Profile(0, 2, 5, 3)));
    }

    @Test
    void on_their_side_a_box_stays_a_box_and_a_cylinder_becomes_a_lying_one() {
        Placement onFront = Placement.resting(new Attitude(Side.BACK, 0), BLANK, Point3.ORIGIN);
        Prism box = Prism.box(Point2.ORIGIN, new Point2(82, 52), 38, 40);
        UprightCylinder hole = new UprightCylinder(new Point2(41, 26), 6, 0, 40);

        assertThat(box.placed(onFront).kind()).isEqualTo(Solid.Kind.PRISM);
        assertThat(box.placed(onFront).box().size()).isEqualTo(new Point3(82, 2, 52));
        assertThat(hole.placed(onFront).kind()).isEqualTo(Solid.Kind.TURNED);
        assertThat(hole.placed(onFront).box().size()).isEqualTo(new Point3(12, 40, 12));
        assertThat(hole.placed(onFront).placed(onFront.inverse())).isEqualTo(hole);
    }

    @Test
    void a_solid_at_any_attitude_holds_the_moved_places_and_no_others() {
        Prism block = Prism.box(Point2.ORIGIN, new Point2(30, 20), 0, 10);
        Rounds.each(26, (random, round) -> {
            Motion motion = Motion.aboutX(point(random), 6 * random.nextDouble())
                    .then(Motion.aboutY(point(random), 6 * random.nextDouble()));
            Single moved = block.moved(motion);
            for (int i = 0; i < 20; i++) {
                Point3 part = new Point3(
                        40 * random.nextDouble() - 5, 30 * random.nextDouble() - 5, 20 * random.nextDouble() - 5);
                Point3 table = motion.of(part);

                assertThat(moved.core(table.z(), table.z()).contains(table.plan()))
                        .isEqualTo(holds(block, part));
                assertThat(motion.inverse().of(table).distance(part)).isCloseTo(0, within(1e-9));
            }
        });
    }

    private static boolean holds(Prism prism, Point3 p) {
        return prism.region().contains(p.plan()) && p.z() > prism.zLow() && p.z() < prism.zHigh();
    }

    private static Attitude attitude(RandomGenerator random) {
        return new Attitude(Side.values()[random.nextInt(6)], random.nextInt(4));
    }

    private static Point3 point(RandomGenerator random) {
        return new Point3(random.nextInt(100), random.nextInt(100), random.nextInt(100));
    }

    private static Heading cross(Heading a, Heading b) {
        return Heading.along(
                a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}

package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.geometry.Move.Kind.APPROACH;
import static setwright.geometry.Move.Kind.CUT;
import static setwright.geometry.Move.Kind.PLUNGE;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.geometry.plane.Point2;

/** Clearance from what lies or is tilted, worked by hand; the arithmetic stands over each test. */
class AnyAttitudeTest {
    private static final Offset<Double> EXACT = within(1e-6);
    private static final Section CUTTER = new Section("10 mm end mill", Role.CUTTER, Profile.cylinder(0, 30, 5));
    private static final Section SINK = new Section("countersink", Role.CUTTER, new Profile(0, 12, 0, 12));

    /** A shaft of 40 lies along x, its axis at y 0 and z 25; its highest line is at 45. */
    private static final Body SHAFT =
            new Body("shaft", Role.PART, Turned.cylinder(new Point3(-60, 0, 25), new Point3(60, 0, 25), 20));

    /** A block 60 x 40 x 20 on angle blocks of 30 degrees: tilted about its lower front edge on the table along x. */
    private static final Body TILTED = new Body(
            "block",
            Role.PART,
            Polyhedron.of(
                    new Box(
                            Prism.box(new Point2(-30, 0), new Point2(30, 40), 0, 20)
                                    .box()
                                    .plan(),
                            0,
                            20),
                    Motion.aboutX(Point3.ORIGIN, Math.PI / 6)));

    private static Nearest nearest(Section section, ToolPath path, Body body) {
        return Clearance.nearest(ToolStack.of(section), path, List.of(body)).orElseThrow();
    }

    /** The end of the cutter at 48 over the highest line at 45: 3. */
    @Test
    void over_a_lying_shaft_the_height_above_its_highest_line_counts() {
        ToolPath along = ToolPath.from(new Point3(-80, 0, 48)).across(CUT, new Point2(80, 0));

        Nearest near = nearest(CUTTER, along, SHAFT);

        assertThat(near.clearance()).isCloseTo(3, EXACT);
        assertThat(near.place().at().z()).isCloseTo(45, EXACT);
        assertThat(near.place().toward().distance(new Point3(0, 0, -1))).isCloseTo(0, within(1e-4));
    }

    /**
     * The cutter's axis at y 35: its corner is at 35 - 5 = 30 aside of the shaft's axis and at 65 - 25 = 40 over it: 50
     * from the axis, 50 - 20 = 30 from the shaft, down and inward as 3 to 4.
     */
    @Test
    void beside_a_lying_shaft_the_corner_of_the_cutter_counts_toward_its_axis() {
        ToolPath along = ToolPath.from(new Point3(-20, 35, 65)).across(CUT, new Point2(20, 35));

        Nearest near = nearest(CUTTER, along, SHAFT);

        assertThat(near.clearance()).isCloseTo(30, EXACT);
        assertThat(near.sideGap()).isCloseTo(18, within(1e-3));
        assertThat(near.heightGap()).isCloseTo(24, within(1e-3));
        assertThat(near.place().toward().distance(new Point3(0, -0.6, -0.8))).isCloseTo(0, within(1e-4));
    }

    /** Past the end of the shaft at x 60, axis at 72 and below the shaft's top: 72 - 5 - 60 = 7. */
    @Test
    void past_the_end_of_a_lying_shaft_its_flat_end_counts() {
        ToolPath down = ToolPath.from(new Point3(72, 0, 90)).toHeight(PLUNGE, 20);

        assertThat(nearest(CUTTER, down, SHAFT).clearance()).isCloseTo(7, EXACT);
    }

    /** Down to z 43 over the highest line: 45 - 43 = 2 deep. */
    @Test
    void a_plunge_into_a_lying_shaft_touches_by_its_depth() {
        ToolPath down = ToolPath.from(new Point3(0, 0, 90)).toHeight(PLUNGE, 43);

        Nearest near = nearest(CUTTER, down, SHAFT);

        assertThat(near.touches()).isTrue();
        assertThat(near.clearance()).isCloseTo(-2, within(1e-4));
        assertThat(near.place().toolPoint().distance(new Point3(0, 0, 43))).isCloseTo(0, within(1e-3));
        assertThat(near.place().toward().distance(new Point3(0, 0, -1))).isZero();
    }

    /**
     * The slope of the block's top through its upper front edge at y -20 sin 30 = -10, z 20 cos 30 = 17.3205 rises by 30
     * degrees. The cutter's lowest corner toward the slope is at y 10 + 5, z 50: over the edge 25 along y and 32.6795 up;
     * square to the slope 32.6795 cos 30 - 25 sin 30 = 28.3013 - 12.5 = 15.8013.
     */
    @Test
    void over_a_tilted_block_the_corner_of_the_cutter_counts_square_to_the_slope() {
        ToolPath along = ToolPath.from(new Point3(-25, 10, 50)).across(CUT, new Point2(25, 10));

        Nearest near = nearest(CUTTER, along, TILTED);

        double up = 50 - 20 * Math.sqrt(3) / 2;
        assertThat(near.clearance()).isCloseTo(up * Math.sqrt(3) / 2 - 12.5, EXACT);
        assertThat(near.place().toward().distance(new Point3(0, 0.5, -Math.sqrt(3) / 2)))
                .isCloseTo(0, within(1e-6));
    }

    /** Along the slope, 8 square off it: the move keeps the distance of its corner. In the plane x = 0 a plain distance. */
    @Test
    void a_move_down_the_slope_of_a_tilted_block_keeps_its_distance() {
        double cos = Math.sqrt(3) / 2;
        Point3 edge = new Point3(0, -10, 20 * cos);
        Point3 off = new Point3(0, -0.5, cos).times(8);
        Point3 corner = new Point3(0, 5, 0);
        Point3 low = edge.plus(off).minus(corner).plus(new Point3(0, 5 * cos, 2.5));
        Point3 high = low.plus(new Point3(0, 30 * cos, 15));

        Nearest near = nearest(CUTTER, ToolPath.from(high).to(APPROACH, low), TILTED);

        assertThat(near.clearance()).isCloseTo(8, EXACT);
    }

    /** The same cutter 12.5 lower has its corner 15.8013 - 20 cos 30 deep square to the slope: to be lifted by that over cos 30. */
    @Test
    void a_cutter_in_a_tilted_block_is_lifted_along_the_upright() {
        ToolPath along = ToolPath.from(new Point3(-25, 10, 30)).across(CUT, new Point2(25, 10));
        double cos = Math.sqrt(3) / 2;
        double square = (30 - 20 * cos) * cos - 12.5;

        Nearest near = nearest(CUTTER, along, TILTED);

        assertThat(near.touches()).isTrue();
        assertThat(near.heightGap()).isCloseTo(square / cos, within(1e-4));
    }

    /**
     * A countersink of 90 degrees, its point at y 20 and z 62 beside a strap that ends at y 30 with its top at 60. The slant
     * through the point rises as it goes out: at the strap's edge, 10 out, it would be at 72, 12 over the edge: 12 / √2
     * square to the slant, whose foot is (10 - 2) / 2 = 4 out. At y 17 and z 72 the foot would be (13 - 12) / 2 = 0.5 out; at
     * z 75 it is before the point, which itself is nearest: hypot(13, 15).
     */
    @Test
    void a_cone_over_the_end_of_a_strap_clears_it_by_its_slant_or_its_point() {
        Body strap = new Body("strap", Role.STRAP, Prism.box(new Point2(-15, 30), new Point2(15, 90), 40, 60));
        ToolPath high = ToolPath.from(new Point3(0, 20, 90)).toHeight(PLUNGE, 62);
        ToolPath higher = ToolPath.from(new Point3(0, 17, 90)).toHeight(PLUNGE, 75);
        ToolPath low = ToolPath.from(new Point3(0, 20, 90)).toHeight(PLUNGE, 53);

        assertThat(nearest(SINK, high, strap).clearance()).isCloseTo(12 / Math.sqrt(2), EXACT);
        assertThat(nearest(SINK, higher, strap).clearance()).isCloseTo(Math.hypot(13, 15), EXACT);
        // At 53 the slant is 7 out at the strap's top: 10 - 7 = 3 aside of the edge, 3 / √2 square to the slant.
        assertThat(nearest(SINK, low, strap).clearance()).isCloseTo(3 / Math.sqrt(2), EXACT);
    }

    /** A cylinder over the edge of a box: 13 - 10 = 3 aside, 24 - 20 = 4 above: 5; on a slope of 1 in 2 from there upward. */
    @Test
    void a_slanted_move_off_the_edge_of_a_box_is_exact() {
        Section section = new Section("holder", Role.HOLDER, Profile.cylinder(0, 40, 10));
        Body box = new Body("jaw", Role.SOLID_JAW, Prism.box(new Point2(-50, 0), new Point2(50, 30), 0, 20));
        ToolPath away = ToolPath.from(new Point3(0, -13, 24)).to(APPROACH, new Point3(0, -53, 44));

        assertThat(nearest(section, away, box).clearance()).isCloseTo(5, EXACT);
    }

    @Test
    void what_is_upright_has_the_same_distance_by_its_profile_and_as_a_body_without_hollows() {
        Rounds.each(61, (random, round) -> {
            Single solid = switch (random.nextInt(3)) {
                case 0 -> Prism.box(new Point2(-5, -9), new Point2(6, 4), 3, 17);
                case 1 -> new UprightCylinder(new Point2(1, 2), 1 + 6 * random.nextDouble(), 3, 17);
                default -> new UprightCone(new Point2(1, 2), new Profile(3, 17, 8 * random.nextDouble(), 3));
            };
            Section section = new Section(
                    "section", Role.CUTTER, new Profile(0, 9, 6 * random.nextDouble(), 6 * random.nextDouble()));
            Point3 from = place(random.nextDouble(), random.nextDouble(), random.nextDouble());
            Point3 to = random.nextBoolean()
                    ? Point3.of(
                            place(random.nextDouble(), random.nextDouble(), 0).plan(), from.z())
                    : Point3.of(from.plan(), 40 * random.nextDouble());
            Move move = Move.straight(CUT, from, to);
            Body body = new Body("body", Role.STOP, solid);

            Nearest byProfile = nearest(section, new ToolPath(from, List.of(move)), body);
            Target target = Target.of(solid);
            Tally tally = new Tally(List.of(section));
            new ConvexSearch(target.convex(), target.box(), tally).along(Stretch.of(0, move));

            double other = tally.found(body).get(0).clearance();
            if (byProfile.touches()) {
                assertThat(other).isLessThanOrEqualTo(0);
            } else {
                assertThat(other).isCloseTo(byProfile.clearance(), within(1e-7));
            }
        });
    }

    private static Point3 place(double x, double y, double z) {
        return new Point3(60 * x - 30, 60 * y - 30, 40 * z);
    }
}

package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.geometry.Move.Kind.APPROACH;
import static setwright.geometry.Move.Kind.CROSS;
import static setwright.geometry.Move.Kind.CUT;
import static setwright.geometry.Move.Kind.PLUNGE;
import static setwright.geometry.Move.Kind.RETRACT;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/** Hand-worked places; the arithmetic stands in each test. */
class ClearanceTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Section CUTTER = new Section("10 mm end mill", Role.CUTTER, Profile.cylinder(0, 30, 5));
    private static final Section HOLDER = new Section("holder", Role.HOLDER, Profile.cylinder(35, 80, 20));
    private static final ToolStack TOOL = ToolStack.of(CUTTER, HOLDER);
    private static final Body JAW =
            new Body("solid jaw", Role.SOLID_JAW, Prism.box(new Point2(-75, 26), new Point2(75, 50), 0, 30));
    private static final Body STUD = new Body("stud", Role.STUD, new UprightCylinder(new Point2(0, -40), 6, 0, 60));

    /** Cutter: axis at y 10 and z 25: 26 - 10 - 5 = 11 beside. Holder: 26 - 10 - 20 = -4 in plan, 25 + 35 - 30 above. */
    @Test
    void a_pass_along_a_jaw_keeps_the_side_gap_below_its_top_and_the_height_gap_above() {
        ToolPath pass = ToolPath.from(new Point3(-60, 10, 25)).across(CUT, new Point2(60, 10));

        List<Nearest> found = Clearance.all(TOOL, pass, List.of(JAW));

        assertThat(found).hasSize(2);
        assertThat(found.get(0)).satisfies(cutter -> {
            assertThat(cutter.section()).isEqualTo(CUTTER);
            assertThat(cutter.clearance()).isCloseTo(11, EXACT);
            assertThat(cutter.heightGap()).isCloseTo(-5, EXACT);
            assertThat(cutter.place().at().y()).isCloseTo(26, EXACT);
            assertThat(cutter.place().toward()).isEqualTo(new Point3(0, 1, 0));
        });
        assertThat(found.get(1)).satisfies(holder -> {
            assertThat(holder.section()).isEqualTo(HOLDER);
            assertThat(holder.clearance()).isCloseTo(30, EXACT);
            assertThat(holder.sideGap()).isCloseTo(-4, EXACT);
            assertThat(holder.place().toward()).isEqualTo(new Point3(0, 0, -1));
            assertThat(holder.body()).isEqualTo(JAW);
        });
    }

    /** Cutter against a round stud: distance of axes 30 - 5 - 6 = 19 where the pass comes by, and there only. */
    @Test
    void a_pass_by_a_stud_is_tightest_abreast_of_it() {
        ToolPath pass = ToolPath.from(new Point3(-60, -10, 25)).across(CUT, new Point2(60, -10));

        Nearest cutter =
                Clearance.nearest(TOOL.only(Role.CUTTER), pass, List.of(STUD)).orElseThrow();

        assertThat(cutter.clearance()).isCloseTo(19, EXACT);
        assertThat(cutter.place().toolPoint().distance(new Point3(0, -10, 25))).isCloseTo(0, EXACT);
        assertThat(cutter.place().at().plan().distance(new Point2(0, -34))).isCloseTo(0, EXACT);
    }

    /** Holder 60 up at y -10: stud top at 60, axes 30 apart: 30 - 20 - 6 = 4 aside, 64 - 60 = 4 above: 4 √2. */
    @Test
    void above_and_beside_at_once_both_gaps_count() {
        ToolPath pass = ToolPath.from(new Point3(-60, -10, 29)).across(CUT, new Point2(60, -10));

        Nearest holder =
                Clearance.nearest(TOOL.only(Role.HOLDER), pass, List.of(STUD)).orElseThrow();

        assertThat(holder.clearance()).isCloseTo(4 * Math.sqrt(2), EXACT);
        Point3 toward = new Point3(0, -1, -1).times(1 / Math.sqrt(2));
        assertThat(holder.place().toward().distance(toward)).isCloseTo(0, EXACT);
    }

    @Test
    void a_worked_clearance_names_the_two_that_come_near_and_both_gaps() {
        ToolPath pass = ToolPath.from(new Point3(-60, -10, 29)).across(CUT, new Point2(60, -10));

        Worked worked = Clearance.nearest(TOOL.only(Role.HOLDER), pass, List.of(STUD))
                .orElseThrow()
                .worked("s1/o3");

        assertThat(worked.deciding()).isEqualTo("holder and stud");
        assertThat(worked.inside()).isCloseTo(Math.hypot(4, 4), EXACT);
        assertThat(worked.from())
                .extracting(Value::inside)
                .satisfiesExactly(
                        side -> assertThat(side).isCloseTo(4, EXACT),
                        height -> assertThat(height).isCloseTo(4, EXACT));
    }

    /** Plunged to z 28 at y 23: 26 - 23 - 5 = -2 aside, 28 - 30 = -2 deep; to 29: 1 deep. */
    @Test
    void a_plunge_into_a_jaw_top_touches_by_its_depth() {
        ToolPath plunge = ToolPath.from(new Point3(0, 23, 60)).toHeight(PLUNGE, 29);

        Nearest cutter = Clearance.nearest(TOOL, plunge, List.of(JAW)).orElseThrow();

        assertThat(cutter.touches()).isTrue();
        assertThat(cutter.clearance()).isCloseTo(-1, EXACT);
        assertThat(cutter.place().toolPoint().z()).isCloseTo(29, EXACT);
        assertThat(cutter.place().at().z()).isCloseTo(30, EXACT);
        assertThat(cutter.place().toward()).isEqualTo(new Point3(0, 0, -1));
    }

    /** The cutter's top at -8 + 30 = 22, under a strap that starts at 20. */
    @Test
    void what_touches_from_below_is_to_be_lowered() {
        Body strap = new Body("strap", Role.STRAP, Prism.box(new Point2(-50, -50), new Point2(50, 50), 20, 40));
        ToolPath under = ToolPath.from(new Point3(-10, 0, -8)).across(CUT, new Point2(10, 0));

        Nearest near =
                Clearance.nearest(TOOL.only(Role.CUTTER), under, List.of(strap)).orElseThrow();

        assertThat(near.clearance()).isCloseTo(-2, EXACT);
        assertThat(near.place().toward().distance(new Point3(0, 0, 1))).isZero();
    }

    /** A drill of 6.8 comes out 4.0 under a part on parallels of 6: its corner is 3.4 - 2 = 1.4 over the inner face. */
    @Test
    void a_drill_that_breaks_through_meets_the_parallel_under_it() {
        double point = 2;
        ToolStack drill = ToolStack.of(
                new Section("point", Role.CUTTER, new Profile(0, point, 0, 3.4)),
                new Section("drill", Role.CUTTER, Profile.cylinder(point, 60, 3.4)));
        Body parallel = new Body("parallel", Role.PARALLEL, Prism.box(new Point2(-70, 0), new Point2(70, 6), 0, 30));
        ToolPath hole =
                ToolPath.from(new Point3(10, -2, 80)).toHeight(PLUNGE, 26).toHeight(RETRACT, 80);

        List<Nearest> found = Clearance.all(drill, hole, List.of(parallel));

        assertThat(found).allSatisfy(near -> assertThat(near.clearance()).isCloseTo(-1.4, EXACT));
        assertThat(found).allSatisfy(near -> assertThat(near.place().toward()).isEqualTo(new Point3(0, 1, 0)));
    }

    /** Held 0.5 further away than its radius from the parallel, and 20 beside its end. */
    @Test
    void a_drill_beside_a_parallel_clears_it_however_deep_it_goes() {
        ToolStack drill = ToolStack.of(new Section("drill", Role.CUTTER, Profile.cylinder(0, 60, 3.4)));
        Body parallel = new Body("parallel", Role.PARALLEL, Prism.box(new Point2(-70, 0), new Point2(70, 6), 0, 30));
        ToolPath hole = ToolPath.from(new Point3(10, -3.9, 80)).toHeight(PLUNGE, -5);

        assertThat(Clearance.nearest(drill, hole, List.of(parallel))
                        .orElseThrow()
                        .clearance())
                .isCloseTo(0.5, EXACT);
    }

    /** A boring bar of 8 in a bore of 20, 3 off its middle: 10 - 3 - 4. */
    @Test
    void in_a_bore_the_tool_clears_the_wall_by_the_difference_of_radii_less_the_offset() {
        Stock bored = Stock.block(new Point3(60, 60, 40)).less(new UprightCylinder(new Point2(30, 30), 10, -1, 41));
        ToolStack bar = ToolStack.of(new Section("bar", Role.SHANK, Profile.cylinder(0, 100, 4)));
        ToolPath down = ToolPath.from(new Point3(33, 30, 60)).toHeight(CUT, 5);
        Body part = new Body("part", Role.PART, bored.solid());

        Nearest near = Clearance.nearest(bar, down, List.of(part)).orElseThrow();

        assertThat(near.clearance()).isCloseTo(3, EXACT);
        assertThat(near.place().at().plan().distance(new Point2(40, 30))).isCloseTo(0, EXACT);
    }

    /** Round the bore at radius 4: 10 - 4 - 4 on the way, whole turn. */
    @Test
    void round_moves_are_exact() {
        Stock bored = Stock.block(new Point3(60, 60, 40)).less(new UprightCylinder(new Point2(30, 30), 10, -1, 41));
        ToolStack cutter = ToolStack.of(new Section("cutter", Role.CUTTER, Profile.cylinder(0, 50, 4)));
        ToolPath round = ToolPath.from(new Point3(34, 30, 5)).fullTurn(CUT, new Point2(30, 30), true);

        assertThat(Clearance.nearest(cutter, round, List.of(new Body("part", Role.PART, bored.solid())))
                        .orElseThrow()
                        .clearance())
                .isCloseTo(2, EXACT);
    }

    /** Down a slope of 1 in 4 to 10 above the jaw's inner edge, 20 beyond it: nearest at its lower end. */
    @Test
    void a_slanted_move_is_bounded_on_the_side_of_caution() {
        ToolStack cutter = TOOL.only(Role.CUTTER);
        ToolPath slope = ToolPath.from(new Point3(0, -54, 60)).to(APPROACH, new Point3(0, 46, 35));
        double exact = 5;

        Nearest near = Clearance.nearest(cutter, slope, List.of(JAW)).orElseThrow();

        assertThat(near.clearance()).isBetween(exact - Search.STEP, exact);
    }

    /** Level with a ball of moves: the edge of the jaw from a slanted path, in the plane x = 0 a plain distance. */
    @Test
    void a_slanted_move_past_an_edge_passes_it_by_the_distance_of_edge_and_slope() {
        ToolStack needle = ToolStack.of(new Section("needle", Role.CUTTER, Profile.cylinder(0, 0, 0)));
        ToolPath slope = ToolPath.from(new Point3(0, -14, 60)).to(APPROACH, new Point3(0, 26 + 40, 60 - 80 / 4.0));
        double exact = (60 - 40 / 4.0 - 30) * 4 / Math.sqrt(17);
        Body edge = new Body("edge", Role.STOP, Prism.box(new Point2(-9, 26), new Point2(9, 26), 0, 30));

        assertThat(Clearance.nearest(needle, slope, List.of(edge)).orElseThrow().clearance())
                .isBetween(exact - Search.STEP, exact + 1e-9);
    }

    @Test
    void of_several_bodies_the_tightest_comes_first_and_what_is_far_off_is_left_out() {
        Body far = new Body("far", Role.STOP, Prism.box(new Point2(0, 900), new Point2(10, 910), 0, 10));
        ToolPath pass = ToolPath.from(new Point3(-60, 10, 25)).across(CROSS, new Point2(60, 10));

        List<Nearest> found = Clearance.all(TOOL.only(Role.CUTTER), pass, List.of(far, STUD, JAW));

        assertThat(found).extracting(near -> near.body().name()).containsExactly("solid jaw", "stud");
        assertThat(Clearance.nearest(TOOL, pass, List.of(far))).isEmpty();
        assertThat(Clearance.nearest(TOOL, pass, List.of())).isEmpty();
    }

    @Test
    void the_move_that_is_tightest_is_named() {
        ToolPath path = ToolPath.from(new Point3(0, 0, 100))
                .across(CROSS, new Point2(0, 38))
                .toHeight(APPROACH, 33)
                .toHeight(RETRACT, 100);

        Nearest near = Clearance.nearest(TOOL, path, List.of(JAW)).orElseThrow();

        assertThat(near.clearance()).isCloseTo(3, EXACT);
        assertThat(near.place().move()).isEqualTo(1);
        assertThat(near.place().toolPoint()).isEqualTo(new Point3(0, 38, 33));
    }

    @Test
    void a_holder_that_goes_into_faced_and_drilled_stock_meets_it_in_one_piece() {
        Stock stock = Stock.block(new Point3(82, 52, 40))
                .less(Prism.box(new Point2(-9, -9), new Point2(99, 99), 38, 41))
                .less(new UprightCylinder(new Point2(41, 26), 6, 20, 45).pointedDown(3));
        ToolPath down = ToolPath.from(new Point3(41, 26, 90)).toHeight(PLUNGE, 0);

        Nearest near = Clearance.nearest(
                        TOOL.only(Role.HOLDER), down, List.of(new Body("part", Role.PART, stock.solid())))
                .orElseThrow();

        assertThat(near.clearance()).isCloseTo(35 - 38, EXACT);
    }

    @Test
    void bodies_without_height_or_width_are_met_all_the_same() {
        Body sheet = new Body("sheet", Role.PACKING, Prism.box(new Point2(-9, -9), new Point2(9, 9), 10, 10));
        Body blade =
                new Body("blade", Role.STOP, new Prism(Region.rectangle(new Point2(0, 0), new Point2(50, 0)), 0, 9));
        ToolPath above = ToolPath.from(new Point3(-40, 8, 12)).across(CROSS, new Point2(60, 8));

        assertThat(Clearance.all(TOOL.only(Role.CUTTER), above, List.of(sheet, blade)))
                .extracting(Nearest::clearance)
                .satisfiesExactly(
                        sheetGap -> assertThat(sheetGap).isCloseTo(2, EXACT),
                        bladeGap -> assertThat(bladeGap).isCloseTo(Math.hypot(3, 3), EXACT));
    }
}

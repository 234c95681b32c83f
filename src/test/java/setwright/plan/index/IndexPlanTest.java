package setwright.plan.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.plan.HoldingJobs.bar;
import static setwright.plan.HoldingJobs.setUp;
import static setwright.plan.HoldingShop.angle;
import static setwright.plan.HoldingShop.length;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import setwright.geometry.Side;
import setwright.job.DeviceHolding;
import setwright.job.Divided;
import setwright.job.GotBy;
import setwright.job.Marks;
import setwright.job.Pattern;
import setwright.job.Placed;
import setwright.job.Size;
import setwright.job.Tooth;
import setwright.location.indexing.Crank;
import setwright.plan.HoldingJobs;
import setwright.plan.Plan;
import setwright.quantity.Printing;
import setwright.quantity.Rational;
import setwright.quantity.UnitSystem;
import setwright.sheet.Step;
import setwright.sheet.Steps;

/** Divided features on the devices of the shop: dividing head 40 to 1, hexagon collet block, rotary table 90 to 1. */
class IndexPlanTest {
    private static final Tooth MODULE_ONE = new Tooth(length("1 mm"), angle("20 deg"));

    private static Plan plan(DeviceHolding.On on, Divided divided) {
        return HoldingJobs.plan(
                bar("22 mm", "20 mm"), List.of(divided), List.of(setUp(Side.TOP, 0, DeviceHolding.pencilled(on))));
    }

    private static Divided divided(Divided.What what, int count, @Nullable Marks marks, @Nullable Tooth tooth) {
        return new Divided(
                "divided1",
                "",
                Side.TOP,
                what,
                count,
                size("20 mm"),
                null,
                size("2.25 mm"),
                size("5 mm"),
                new Placed(Pattern.Datum.CENTRE, length("0 mm"), length("0 mm"), angle("0 deg")),
                marks,
                tooth,
                null,
                GotBy.TOOL);
    }

    private static Size size(String text) {
        return Size.of(length(text));
    }

    private static FeatureIndex only(Plan plan) {
        assertThat(plan.index().tables()).hasSize(1);
        return plan.index().tables().get(0);
    }

    /** 40/20 is 2 whole turns; span 7.6604 over three teeth is that of span tables (from memory). */
    @Test
    void a_gear_on_the_dividing_head_has_its_moves_its_cutter_and_what_it_measures() {
        FeatureIndex index =
                only(plan(DeviceHolding.On.DIVIDING_HEAD, divided(Divided.What.TEETH, 20, null, MODULE_ONE)));
        assertThat(index.how()).contains("2 turns");
        assertThat(index.positions()).hasSize(21).allSatisfy(at -> {
            assertThat(at.turns()).isEqualTo(2L * at.number());
            assertThat(at.marks()).isZero();
        });
        GearCheck gear = index.gear();
        assertThat(gear).isNotNull();
        assertThat(gear.number()).isEqualTo(3);
        assertThat(gear.half()).isEqualTo(3.5);
        assertThat(gear.wholeDepth().inside()).isCloseTo(2.25, within(1e-12));
        assertThat(gear.span().inside()).isCloseTo(7.6604, within(0.00006));
    }

    @Test
    void a_module_in_inches_is_cut_with_a_cutter_of_diametral_pitch() {
        Tooth tooth = new Tooth(length("1/24 in"), angle("14.5 deg"));
        assertThat(tooth.diametralPitch()).isCloseTo(24, within(1e-9));
        GearCheck gear = only(plan(DeviceHolding.On.DIVIDING_HEAD, divided(Divided.What.TEETH, 20, null, tooth)))
                .gear();
        assertThat(gear).isNotNull();
        assertThat(gear.number()).isEqualTo(6);
    }

    @Test
    void the_last_position_is_the_first_again_on_every_device() {
        for (DeviceHolding.On on : List.of(DeviceHolding.On.DIVIDING_HEAD, DeviceHolding.On.ROTARY_TABLE)) {
            for (int count : new int[] {3, 4, 17, 48, 360}) {
                FeatureIndex index = only(plan(on, divided(Divided.What.GRADUATIONS, count, null, null)));
                Crank.Position last = index.positions().get(count);
                assertThat(last.place()).isEqualTo(Rational.ONE);
                assertThat(last.error()).isEqualTo(Rational.ZERO);
                assertThat(last.marks()).isZero();
            }
        }
    }

    @Test
    void a_hexagon_block_makes_six_flats_and_says_what_makes_four() {
        DeviceHolding.On block = DeviceHolding.On.COLLET_BLOCK;
        assertThat(only(plan(block, divided(Divided.What.FLATS, 6, null, null))).positions())
                .extracting(Crank.Position::marks)
                .containsExactly(0, 1, 2, 3, 4, 5, 0);
        FeatureIndex four = only(plan(block, divided(Divided.What.FLATS, 4, null, null)));
        assertThat(four.positions()).isEmpty();
        assertThat(four.how()).contains("6 sides", "does not divide in 4", "dividing head");
    }

    @Test
    void a_number_that_no_circle_makes_is_geared_and_the_hand_check_is_said() {
        FeatureIndex index = only(plan(DeviceHolding.On.DIVIDING_HEAD, divided(Divided.What.TEETH, 53, null, null)));
        assertThat(index.how()).contains("gears", "see which way the plate goes");
        assertThat(index.positions().get(1).turns()).isZero();
        assertThat(index.positions()).hasSize(54);
    }

    @Test
    void a_number_that_no_circle_makes_and_no_gears_help_is_said() {
        FeatureIndex index = only(plan(DeviceHolding.On.DIVIDING_HEAD, divided(Divided.What.TEETH, 383, null, null)));
        assertThat(index.positions()).isEmpty();
        assertThat(index.how()).contains("does not come to 383");
    }

    @Test
    void graduations_are_walked_ten_at_a_time_and_teeth_one_by_one() {
        Marks marks = new Marks(10, size("9 mm"), 5, size("7 mm"));
        assertThat(marks.at(20)).isEqualTo(Marks.Line.LONG);
        assertThat(marks.at(25)).isEqualTo(Marks.Line.MIDDLE);
        assertThat(marks.at(26)).isEqualTo(Marks.Line.SHORT);
        List<Step> scale =
                round(plan(DeviceHolding.On.ROTARY_TABLE, divided(Divided.What.GRADUATIONS, 360, marks, null)));
        assertThat(scale).hasSize(37);
        assertThat(scale.get(1).text()).startsWith("Divisions 10 to 19 of 360.").contains("long line");
        List<Step> gear =
                round(plan(DeviceHolding.On.DIVIDING_HEAD, divided(Divided.What.TEETH, 24, null, MODULE_ONE)));
        assertThat(gear).hasSize(25);
        assertThat(gear.get(24).check()).contains("last equals the first");
    }

    private static List<Step> round(Plan plan) {
        return Steps.of(plan, new Printing(UnitSystem.METRIC)).stream()
                .filter(step -> step.id().contains("/division-"))
                .toList();
    }
}

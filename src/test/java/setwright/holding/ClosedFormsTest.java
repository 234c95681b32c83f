package setwright.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import setwright.quantity.Given;
import setwright.quantity.Unit;

class ClosedFormsTest {
    private static final double ACME = Math.toRadians(14.5);

    private static Example example(String id) {
        return Example.of("closed-forms.csv", id);
    }

    @Test
    void grip_needed_against_a_force_along_the_jaws_is_that_of_the_example() {
        Example along = example("FX-VISE-ALONG-LOW");

        along.holdsFor(ViseForms.along(along.input("P_along_jaw_N"), along.input("mu")));
    }

    @Test
    void grip_needed_against_a_force_square_to_the_jaws_is_that_of_the_examples() {
        Example away = example("FX-VISE-AWAY");
        Example toward = example("FX-VISE-TOWARD");

        away.holdsFor(away.input("P_N")
                * ViseForms.shareAway(
                        away.input("h_above_jaw_bottom"), away.input("mu"), away.input("width"), away.input("grip")));
        toward.holdsFor(toward.input("P_N")
                * ViseForms.shareToward(
                        toward.input("h_above_jaw_bottom"),
                        toward.input("mu"),
                        toward.input("width"),
                        toward.input("grip")));
    }

    @TestFactory
    Stream<DynamicTest> a_strap_shares_the_force_of_its_stud_as_the_examples_say() {
        return Example.startingWith("closed-forms.csv", "SC-SPLIT")
                .map(e -> DynamicTest.dynamicTest(e.id(), () -> {
                    double stud = e.input("F_bolt_kN");
                    double a = e.input("toe_to_bolt_mm");
                    double b = e.input("bolt_to_heel_mm");
                    e.holdsFor(e.id().endsWith("WORK") ? StrapForms.onWork(stud, a, b) : StrapForms.onHeel(stud, a, b));
                }));
    }

    @TestFactory
    Stream<DynamicTest> preload_from_torque_is_that_of_the_tightening_table() {
        return Example.startingWith("closed-forms.csv", "BT-INCH")
                .filter(e -> e.id().endsWith("T"))
                .map(e -> DynamicTest.dynamicTest(e.id(), () -> {
                    double torque = Unit.LBF_FT.toInside(e.expected());
                    double preload = ScrewForms.preload(torque, e.input("K"), Unit.IN.toInside(e.input("d_in")));

                    assertThat(Unit.LBF.fromInside(preload))
                            .isCloseTo(e.input("F_lbf"), within(0.002 * e.input("F_lbf")));
                }));
    }

    @Test
    void preload_from_torque_is_that_of_the_metric_examples() {
        Example inverse = example("BT-TKDF-INV");
        inverse.holdsFor(ScrewForms.preload(
                Unit.N_M.toInside(inverse.input("T_Nm")), inverse.input("K"), inverse.input("d_mm")));

        Example m12 = example("BT-TKDF-M12-K0.3");
        double preload = ScrewForms.preload(Unit.N_M.toInside(m12.expected()), m12.input("K"), m12.input("d_mm"));
        assertThat(preload).isCloseTo(m12.input("F_N"), within(0.001 * m12.input("F_N")));
    }

    @Test
    void a_power_screw_has_the_lead_angle_torque_and_efficiency_of_the_textbook() {
        Example lowering = example("VS-MOTT-TLOWER");
        Screw screw = new Screw(lowering.input("Dp"), lowering.input("L"), lowering.input("f"), ACME);
        Example angle = example("VS-MOTT-LEAD");
        Example efficiency = example("VS-MOTT-EFF");

        angle.holdsFor(Math.toDegrees(Math.atan(screw.rise())));
        lowering.holdsFor(lowering.input("F") * ScrewForms.releasingArm(screw));
        efficiency.holdsFor(ScrewForms.efficiency(efficiency.input("F"), efficiency.input("L"), efficiency.input("T")));
        assertThat(screw.holdsItself()).isTrue();
    }

    @Test
    void raising_with_the_textbook_screw_takes_the_torque_that_its_efficiency_is_worked_from() {
        Example raising = example("VS-MOTT-EFF");
        Screw screw = new Screw(1.3429, raising.input("L"), 0.15, ACME);

        double torque = raising.input("F") * ScrewForms.raisingArm(screw);

        assertThat(torque).isCloseTo(raising.input("T"), within(0.005 * raising.input("T")));
    }

    /** The exercise states no flank angle; its figure is that of a square thread. */
    @Test
    void a_vise_screw_with_its_collar_gives_the_force_of_the_press_example() {
        Example press = example("VS-PRESS-TR");
        double meanDiameter = press.input("d") - press.input("p") / 2;
        Screw screw = new Screw(meanDiameter, press.input("p"), press.input("f"), 0);

        double torque = Unit.N_M.toInside(press.expected());
        double force = ScrewForms.force(torque, screw, press.input("fc"), press.input("dc"));

        assertThat(force).isCloseTo(press.input("F_N"), within(0.002 * press.input("F_N")));
    }

    @Test
    void a_slanted_flank_takes_more_torque_than_a_square_one() {
        double square = ScrewForms.raisingArm(new Screw(20, 4, 0.15, 0));
        double slanted = ScrewForms.raisingArm(new Screw(20, 4, 0.15, ACME));

        assertThat(slanted).isBetween(1.02 * square, 1.05 * square);
    }

    @Test
    void force_from_torque_and_efficiency_is_that_of_the_example() {
        Example force = example("VS-FORCE");

        force.holdsFor(ScrewForms.forceByEfficiency(
                        Unit.N_M.toInside(force.input("T_Nm")), force.input("lead_mm"), force.input("efficiency"))
                / 1000);
    }

    @Test
    void a_block_tips_and_slides_where_the_examples_say() {
        Example tips = example("ST-MSU-3");
        Example height = example("ST-TIP-H");
        Example slides = example("ST-BLOCK-CLAMP-SLIDE2");
        Example rule = example("FX-CLAMP-SIMPLE");

        tips.holdsFor(TipForms.standing(0, 0, tips.input("W"), tips.input("a")) / tips.input("h"));
        height.holdsFor(TipForms.heightWhereItTips(0.4, height.input("mu")));
        slides.holdsFor(
                TipForms.clampAgainstSliding(slides.input("P"), slides.input("W"), slides.input("mu_table"), 2));
        rule.holdsFor(TipForms.clampAgainstSliding(rule.input("SF") * 1000, 0, rule.input("mu"), 1));
    }

    @Test
    void a_clamped_block_is_at_the_point_of_tipping_with_the_clamp_of_the_example() {
        Example clamp = example("ST-BLOCK-CLAMP-TIP");

        double factor = TipForms.standing(clamp.expected(), 50, 30, 100) / TipForms.tipping(800, 60, 0);

        assertThat(factor).isCloseTo(1, within(1e-3));
    }

    @Test
    void a_stop_under_the_force_takes_its_height_off_the_lever() {
        assertThat(TipForms.tipping(100, 60, 20)).isEqualTo(TipForms.tipping(100, 40, 0));
    }

    @Test
    void a_worked_force_of_a_vise_takes_its_values_as_they_are_printed() {
        var worked = ScrewForms.VISE_FORCE.of(
                Given.of("torque", Unit.N_M.toInside(14.03), Unit.N_M, "typed here"),
                Given.of("mean diameter", 18, Unit.MM, "typed here"),
                Given.of("lead", 4, Unit.MM, "typed here"),
                Given.of("friction", 0.09, Unit.NONE, "typed here"),
                Given.of("flank angle", 0, Unit.DEG, "typed here"),
                Given.of("collar friction", 0.09, Unit.NONE, "typed here"),
                Given.of("collar mean diameter", 30, Unit.MM, "typed here"));

        assertThat(worked.printed()).isCloseTo(5000, within(10.0));
    }
}

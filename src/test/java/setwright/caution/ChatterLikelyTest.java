package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.job.OperationField;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.plan.cut.Stability;
import setwright.shop.MeasuredMode;
import setwright.shop.TapTest;

class ChatterLikelyTest {
    private static final String SLUG = "chatter-likely";
    private static final String FACE = "f1-face";

    /** An end mill of 20 in its collet that faces in lanes of 10, 45 out, tapped when it stood out so far. */
    private static Bench tapped(double depth, String hertz, String damping, double stickOut) {
        Bench bench = ToolCases.lanes(10, depth, 150).mm(FACE, OperationField.STICK_OUT, 45);
        var mode = new MeasuredMode(
                SmallShop.READING.frequency(hertz),
                SmallShop.READING.ratio(damping),
                SmallShop.READING.stiffness("4 N/um"));
        var test = new TapTest(
                "tap-test-1",
                "End mill 20 in its collet",
                SmallShop.MACHINE,
                "collet-r8-20mm",
                SmallCutters.END_MILL,
                SmallShop.length(stickOut + " mm"),
                mode,
                mode,
                "common practice: sample");
        return bench.in(SmallShop.shop().with(List.of(test)));
    }

    private static Stability stability(Bench bench) {
        return stability(bench.plan());
    }

    private static Stability stability(Plan plan) {
        return plan.cut().operation(FACE).map(OperationCut::stability).orElseThrow();
    }

    @Test
    void a_tool_that_was_tapped_is_judged_by_its_lobes_however_many_waves_there_are() {
        Stability stability = stability(tapped(2, "850 Hz", "0.03", 45));

        assertThat(stability.basis()).isEqualTo(Stability.Basis.MEASURED);
        assertThat(stability.waves().inside()).isGreaterThan(5);
        assertThat(stability.predictable()).isTrue();
    }

    @Test
    void a_pass_deeper_than_its_quiet_depth_is_a_caution_and_one_just_within_is_none() {
        double quiet = stability(tapped(2, "850 Hz", "0.03", 45)).quietDepth().orElseThrow();

        assertThat(tapped(1.02 * quiet, "850 Hz", "0.03", 45).found(SLUG))
                .singleElement()
                .satisfies(caution -> assertThat(caution.message())
                        .contains("as it was tapped")
                        .contains("waves between teeth")
                        .contains("quiet"));
        assertThat(tapped(0.98 * quiet, "850 Hz", "0.03", 45).found(SLUG)).isEmpty();
    }

    @Test
    void a_tap_test_of_another_stick_out_does_not_count() {
        assertThat(stability(tapped(2, "850 Hz", "0.03", 45.9)).basis()).isEqualTo(Stability.Basis.MEASURED);
        Stability other = stability(tapped(2, "850 Hz", "0.03", 46.1));
        assertThat(other.basis()).isEqualTo(Stability.Basis.ESTIMATED);
        assertThat(other.predictable()).isFalse();
        assertThat(other.way()).isEqualTo(Stability.Way.NOT_PREDICTABLE);
    }

    @Test
    void few_waves_between_teeth_are_followed_tooth_by_tooth_in_the_second_stage_only() {
        Bench bench = tapped(3, "90 Hz", "0.02", 45);
        Plan first = bench.plan();
        Plan second = first.settled(Optional.empty());

        assertThat(stability(first).waves().inside()).isLessThan(5);
        assertThat(stability(first).way()).isEqualTo(Stability.Way.ZERO_ORDER);
        assertThat(stability(second).way()).isEqualTo(Stability.Way.STEPPED);
        assertThat(stability(second).quietDepth().orElseThrow())
                .as("both ways know the same cut")
                .isBetween(
                        0.7 * stability(first).quietDepth().orElseThrow(),
                        1.5 * stability(first).quietDepth().orElseThrow());
    }

    @Test
    void what_was_followed_once_is_not_followed_again_after_an_edit_elsewhere() {
        Bench bench = tapped(3, "90 Hz", "0.02", 45);
        Plan settled = bench.plan().settled(Optional.empty());
        Plan edited = bench.mm("h1-drill", OperationField.STICK_OUT, 70).plan().settled(Optional.of(settled));

        assertThat(stability(edited)).isSameAs(stability(settled));
    }

    @Test
    void a_plan_with_nothing_to_follow_is_its_own_second_stage() {
        Plan plan = Cases.block().plan();

        assertThat(plan.settled(Optional.empty())).isSameAs(plan);
    }

    @Test
    void a_quieter_speed_of_the_machine_is_offered_and_clears_it() {
        Bench bench = null;
        for (int hertz = 60; hertz < 120 && bench == null; hertz += 2) {
            double quiet =
                    stability(tapped(2, hertz + " Hz", "0.02", 45)).quietDepth().orElseThrow();
            Bench tried = tapped(1.1 * quiet, hertz + " Hz", "0.02", 45);
            bench = stability(tried).quietSpeed() != null ? tried : null;
        }
        assertThat(bench).as("a tool with a quiet speed beside a loud one").isNotNull();
        Caution caution = bench.found(SLUG).get(0);

        assertThat(caution.message()).contains("Quiet so deep at the nearest: ");
        assertThat(bench.remedies(caution)).anyMatch(remedy -> remedy.text().contains("rev/min"));
    }

    @Test
    void an_ordinary_stick_out_on_the_knee_mill_cannot_be_predicted_and_is_not_spoken_of() {
        Bench bench = ToolCases.lanes(10, 2, 150).mm(FACE, OperationField.STICK_OUT, 45);

        assertThat(stability(bench).predictable()).isFalse();
        assertThat(bench.found(SLUG)).isEmpty();
        assertThat(bench.note(SLUG)).isEmpty();
    }
}

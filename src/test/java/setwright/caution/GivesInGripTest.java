package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.holding.HoldFactor;
import setwright.plan.Plan;
import setwright.plan.hold.HoldPlan;
import setwright.plan.hold.OperationHold;
import setwright.quantity.Given;
import setwright.quantity.Unit;

class GivesInGripTest {
    /** A plan in which two operations are held so, with the motions named. */
    private static List<Caution> found(OperationHold... holds) {
        Plan plan = Cases.block().plan();
        Plan held = new Plan(
                plan.drawnUp(),
                plan.rows(),
                plan.part(),
                plan.cut(),
                new HoldPlan(List.of(holds), List.of(), List.of(), plan.hold().kept()),
                plan.room(),
                plan.place(),
                plan.index(),
                plan.time(),
                plan.choose());
        return Judge.judge(held).cautions().stream()
                .filter(caution -> caution.slug().endsWith("-in-grip"))
                .toList();
    }

    private static OperationHold hold(String operation, double expected, double pessimistic, String motion) {
        return new OperationHold(
                "s1",
                operation,
                setwright.plan.hold.Joint.PART,
                "part",
                new HoldFactor(expected, pessimistic),
                motion.isEmpty() ? "" : "moving jaw, top left",
                motion,
                Given.of("hold factor", expected, Unit.NONE, "typed here"));
    }

    @ParameterizedTest
    @CsvSource({
        "1.29, 1.5, STOP",
        "1.3, 1.5, CAUTION",
        "1.5, 0.79, STOP",
        "1.5, 0.8, CAUTION",
        "1.99, 1.2, CAUTION",
        "3, 0.99, CAUTION"
    })
    void it_is_judged_by_both_factors(double expected, double pessimistic, Severity severity) {
        assertThat(found(hold("f1-face", expected, pessimistic, "slides")))
                .extracting(Caution::severity)
                .containsExactly(severity);
    }

    @Test
    void from_two_and_one_on_nothing_is_said() {
        assertThat(found(hold("f1-face", 2, 1, "slides"))).isEmpty();
    }

    @Test
    void a_stop_on_a_bad_day_comes_before_a_caution_with_the_smaller_usual_factor() {
        List<Caution> found = found(hold("f1-face", 1.4, 0.95, "slides"), hold("h1-drill", 1.6, 0.7, "turns"));

        assertThat(found).hasSize(1);
        assertThat(found.get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(found.get(0).operation()).isEqualTo("h1-drill");
        assertThat(found.get(0).figure()).isEqualTo(Figure.atLeast(1, 0.7, Unit.NONE));
    }

    @Test
    void the_motion_that_starts_first_names_the_caution() {
        assertThat(found(
                        hold("f1-face", 1.5, 1, "lifts"),
                        hold("h1-drill", 1.5, 1, "turns"),
                        hold("h2-drill", 1.5, 1, "tips")))
                .extracting(Caution::slug)
                .containsExactlyInAnyOrder("lifts-in-grip", "slides-in-grip", "tips-in-grip");
    }

    @Test
    void a_part_that_does_not_stand_even_without_the_cut_is_not_run() {
        assertThat(found(hold("f1-face", 0, 0, "")))
                .singleElement()
                .satisfies(caution -> assertThat(caution.message()).contains("even before the cut"))
                .satisfies(caution -> assertThat(caution.severity()).isEqualTo(Severity.STOP));
    }

    @Test
    void the_message_says_both_factors_what_is_asked_and_what_gives_first() {
        assertThat(found(hold("f1-face", 1.62, 0.71, "slides")).get(0).message())
                .isEqualTo("The grip bears 1.6 times the cut, 0.71 on a bad day (s1/f1-face); 2 and 1 are asked."
                        + " The part slides, first at the moving jaw, top left: grip harder or deeper, or take less."
                        + " Grip from 1.9 kN for f1-face to 25 kN: the vise, closed hard, gives no more.");
    }

    @Test
    void one_stronger_grip_is_offered_and_a_lighter_cut_beside_it() {
        Bench bench = Cases.snugFacing(660);

        assertThat(bench.remedies(bench.found("slides-in-grip").get(0)))
                .extracting(Remedy::text)
                .containsExactly("Close the vise firm (now snug, inked).", "Take 2 mm a pass (now 3.0 mm, inked).");
    }
}

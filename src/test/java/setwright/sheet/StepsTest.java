package setwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import setwright.drawing.Samples;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

class StepsTest {
    private static final Printing METRIC = new Printing(UnitSystem.METRIC);
    private static final List<Step> STEPS = Steps.of(Samples.plan(), METRIC);

    @Test
    void every_step_has_an_id_of_its_own() {
        assertThat(STEPS).extracting(Step::id).doesNotHaveDuplicates();
    }

    @Test
    void no_step_has_more_than_thirty_words() {
        assertThat(STEPS)
                .allSatisfy(step -> assertThat(step.text().split("\\s+").length).isBetween(1, 30));
    }

    @Test
    void a_step_of_more_words_is_refused_with_its_name() {
        assertThatThrownBy(() -> new Step("s1/x", Step.Kind.CUT, "s1", "", 0, "word ".repeat(31), "", "", "", false))
                .hasMessageContaining("s1/x")
                .hasMessageContaining("31 words");
    }

    @Test
    void work_is_read_cleaned_held_and_found_before_a_tool_cuts_and_measured_after() {
        assertThat(STEPS.get(0).kind()).isEqualTo(Step.Kind.READ);
        assertThat(first(Step.Kind.CLEAN)).isLessThan(first(Step.Kind.HOLD));
        assertThat(first(Step.Kind.HOLD)).isLessThan(first(Step.Kind.ZERO));
        assertThat(first(Step.Kind.ZERO)).isLessThan(first(Step.Kind.TOOL));
        assertThat(first(Step.Kind.TOOL)).isLessThan(first(Step.Kind.SPEED));
        assertThat(first(Step.Kind.SPEED)).isLessThan(first(Step.Kind.CUT));
        assertThat(first(Step.Kind.MEASURE)).isGreaterThan(first(Step.Kind.CUT));
        assertThat(STEPS.get(STEPS.size() - 1).kind()).isEqualTo(Step.Kind.UNLOAD);
    }

    /** Each of the standing steps that a vise, a chuck and a collet ask for. */
    @Test
    void the_standing_steps_are_all_there() {
        String all = said(STEPS);
        assertThat(all)
                .contains("revision", "deburr", "corner", "tap it down", "neither parallel slides")
                .contains("drawbar tight and its wrench off", "chuck key out", "vise handle off")
                .contains("edge finder or indicator out", "for this tool", "the right way round", "feed lever neutral")
                .contains("table stops", "knee locked", "paper", "snap the collet into the nut", "path clear")
                .contains(
                        "glasses", "gloves", "guards", "the first part before the second", "tighten vise bolts again");
    }

    @Test
    void every_hole_of_every_operation_is_a_step_with_its_place() {
        List<Step> drilled = STEPS.stream()
                .filter(step -> step.operation().equals("h2-drill") && step.kind() == Step.Kind.CUT)
                .toList();

        assertThat(drilled).extracting(Step::hole).containsExactly(2, 3, 4, 5);
        assertThat(drilled.get(0).text())
                .isEqualTo("Drill hole 2. X 2 turns, dial 0.1118 in, Y 8 turns back, dial 0.1858 in.");
        assertThat(drilled.get(0).bitesHere()).isEqualTo("leaves 4.4 mm to the front parallel");
    }

    @Test
    void the_first_cut_the_zero_and_the_first_part_are_hold_points() {
        assertThat(STEPS.stream().filter(Step::holds))
                .extracting(Step::id)
                .containsExactly("job/drawing", "s1/zero", "s1/f1-face/cut", "s1/measure");
    }

    @Test
    void a_changed_speed_says_what_the_last_tool_ran() {
        assertThat(STEPS.stream().map(Step::text)).contains("1115 rev/min for this tool (last tool ran 660).");
    }

    @Test
    void a_tool_that_meets_a_parallel_bites_here() {
        assertThat(Steps.of(Samples.onThickParallels(), METRIC).stream()
                        .filter(step -> step.operation().equals("h2-drill") && step.hole() > 0))
                .hasSize(4)
                .allSatisfy(step -> assertThat(step.bitesHere()).isEqualTo("meets the front parallel by 3.0 mm"));
    }

    @Test
    void without_parallels_none_are_asked_for() {
        assertThat(said(Steps.of(Samples.bottomed(), METRIC)))
                .doesNotContain("against each jaw")
                .contains("it sits on the vise bed all over");
    }

    private static int first(Step.Kind kind) {
        return STEPS.stream().map(Step::kind).toList().indexOf(kind);
    }

    private static String said(List<Step> steps) {
        return steps.stream()
                .flatMap(step -> Stream.of(step.text(), step.act(), step.check()))
                .reduce("", (all, one) -> all + "\n" + one)
                .toLowerCase(Locale.ROOT);
    }
}

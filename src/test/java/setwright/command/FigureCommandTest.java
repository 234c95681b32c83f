package setwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.file.json.Json;
import setwright.file.json.Tree;

class FigureCommandTest {
    private static Tree.JsonObject json(String line) {
        return (Tree.JsonObject) Json.read(line).tree().orElseThrow();
    }

    @Test
    void an_answer_in_json_has_its_name_value_unit_and_working() {
        Run run = Run.of("figure", "spindle-speed", "cutting-speed=30", "diameter=12", "--json");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        Tree.JsonObject object = json(run.out());
        assertThat(object.members().stream().map(Tree.Member::key)).containsExactly("figure", "answers", "worked");
        assertThat(run.out())
                .contains("\"name\": \"speed\", \"value\": 795.77471545947")
                .contains("\"unit\": \"rev/min\"")
                .contains("\"rule\": \"n = 1000 v / (π D)\"");
    }

    @Test
    void a_text_answer_first_says_how_every_input_was_read() {
        Run run = Run.of("figure", "spindle-speed", "cutting-speed=90ft/min", "diameter=1/2in");
        assertThat(run.code()).isZero();
        assertThat(run.out().indexOf("12.7 mm"))
                .isPositive()
                .isLessThan(run.out().indexOf("688 rev/min"));
        assertThat(run.out()).contains("27.432 m/min").contains("typed 1/2in").contains("source: ");
    }

    @Test
    void a_bad_input_is_one_line_on_standard_error_and_ends_with_two() {
        Run run = Run.of("figure", "spindle-speed", "cutting-speed=30", "diameter=wide", "--json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("diameter: ").hasLineCount(1);
    }

    @Test
    void standard_input_is_answered_line_by_line_and_a_bad_line_does_not_stop_the_rest() {
        String input = "spindle-speed cutting-speed=30 diameter=12\nnonsense\n\nthread thread=1/4-20 UNC\n"
                + "spindle-speed cutting-speed=30 diameter=Ø\ntable-feed speed=500 teeth=4 feed-per-tooth=0.1";
        Run run = Run.with(input, "figure", "-", "--json");
        List<Tree.JsonObject> answers =
                run.out().lines().map(FigureCommandTest::json).toList();
        assertThat(run.code()).isZero();
        assertThat(answers.stream().map(answer -> answer.text("figure").orElse("error")))
                .containsExactly("spindle-speed", "error", "error", "thread", "error", "table-feed");
        assertThat(answers.get(1).text("error").orElseThrow()).contains("nonsense");
        assertThat(answers.get(4).text("error").orElseThrow()).contains("Ø");
    }

    @Test
    void without_a_name_every_figure_is_listed_on_a_line_with_its_inputs() {
        Run run = Run.of("figure");
        assertThat(run.code()).isZero();
        assertThat(run.out().lines())
                .anySatisfy(line -> assertThat(line).startsWith("spindle-speed: cutting-speed m/min, diameter mm"))
                .hasSizeGreaterThan(30);
    }

    @Test
    void counts_lists_and_absent_answers_are_json_integers_arrays_and_null() {
        assertThat(Run.of("figure", "dial", "distance=10", "per-turn=5", "--json")
                        .out())
                .contains("\"name\": \"turns\", \"value\": 2,")
                .contains("\"name\": \"divisions\", \"value\": null");
        assertThat(Run.of("figure", "bolt-circle", "holes=2", "diameter=100", "--json")
                        .out())
                .contains("\"name\": \"points\", \"value\": [{\"x\": 50.0, \"y\": 0.0}");
    }

    @Test
    void inch_people_read_inches() {
        assertThat(Run.of("figure", "drill-point", "diameter=1/2", "--units", "inch")
                        .out())
                .contains("0.150 in");
    }
}

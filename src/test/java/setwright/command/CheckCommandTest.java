package setwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.cutting.LimitName;
import setwright.file.Schema;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.job.Operation;

class CheckCommandTest {
    private static final Path BLOCK = Path.of("demo-jobs", "bearing-block.setwright.json");

    private static List<String> broken(String json) {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Schema.CHECK.text(), InputFormat.JSON);
        return schema.validate(json, InputFormat.JSON).stream()
                .map(error -> error.getInstanceLocation() + " " + error.getMessage())
                .toList();
    }

    private static Tree.JsonObject json(String line) {
        return (Tree.JsonObject) Json.read(line).tree().orElseThrow();
    }

    static List<Path> demonstrations() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-jobs"))) {
            return files.filter(file -> file.toString().endsWith(".setwright.json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("demonstrations")
    void the_answer_has_every_key_of_its_schema(Path job) {
        Run run = Run.of("check", job.toString(), "--json");
        assertThat(run.err()).isEmpty();
        assertThat(broken(run.out())).isEmpty();
        assertThat(json(run.out()).text("file")).contains(job.toString());
    }

    @ParameterizedTest
    @MethodSource("demonstrations")
    void the_text_is_at_most_100_columns_wide(Path job) {
        Run run = Run.of("check", job.toString());
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void the_text_says_what_a_newcomer_looks_for() {
        Run run = Run.of("check", BLOCK.toString());
        assertThat(run.out())
                .contains("Bearing block", "Mild steel", "Knee mill", "6 in vise", "Grip", "Knee", "Times")
                .contains("Error budget", "Worked out, for instance", "source: ")
                .doesNotContain("\u001b");
    }

    @Test
    void a_job_that_cannot_be_read_answers_with_its_problems_and_ends_with_two(@TempDir Path folder)
            throws IOException {
        Path broken = folder.resolve("broken.setwright.json");
        String text = Files.readString(BLOCK).replace("\"numberOff\": 12", "\"numberOff\": -1");
        Files.writeString(broken, text.substring(0, text.length() - 40));
        Run run = Run.of("check", broken.toString(), "--json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(broken(run.out())).isEmpty();
        assertThat(json(run.out()).members().stream().map(Tree.Member::key)).containsExactly("file", "problems");
        Run asText = Run.of("check", broken.toString());
        assertThat(asText.code()).isEqualTo(2);
        assertThat(asText.out()).isEmpty();
        assertThat(asText.err()).contains("broken.setwright.json, line ");
    }

    @Test
    void a_folder_is_answered_one_job_a_line_and_ends_with_the_worst(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("below"));
        Files.copy(BLOCK, folder.resolve("below").resolve("block.json"));
        Files.writeString(folder.resolve("a.setwright.json"), "{}");
        Run run = Run.of("check", folder.toString(), "--json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out().lines())
                .hasSize(2)
                .allSatisfy(line -> assertThat(broken(line)).isEmpty());
        assertThat(run.out().lines().map(line -> json(line).text("file").orElse("")))
                .containsExactly(
                        folder.resolve("a.setwright.json").toString(),
                        folder.resolve("below").resolve("block.json").toString());
    }

    @Test
    void several_jobs_end_with_the_worst_in_the_order_2_1_3_0() {
        assertThat(Exit.worst(List.of(Exit.CLEAN, Exit.ACCEPTED))).isEqualTo(Exit.ACCEPTED);
        assertThat(Exit.worst(List.of(Exit.ACCEPTED, Exit.STOPS))).isEqualTo(Exit.STOPS);
        assertThat(Exit.worst(List.of(Exit.STOPS, Exit.UNREADABLE, Exit.CLEAN))).isEqualTo(Exit.UNREADABLE);
    }

    @Test
    void every_name_of_a_limit_and_kind_is_in_the_closed_lists_of_the_schema() {
        for (LimitName name : LimitName.values()) {
            assertThat(Schema.CHECK.text()).contains("\"" + name.words() + "\"");
        }
        for (Operation.Kind kind : Operation.Kind.values()) {
            assertThat(Schema.CHECK.text())
                    .contains("\"" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + "\"");
        }
    }

    @Test
    void severity_leaves_out_what_is_printed_but_not_the_exit_code() {
        Run all = Run.of("check", BLOCK.toString(), "--json");
        Run stops = Run.of("check", BLOCK.toString(), "--json", "--severity", "stop");
        assertThat(stops.code()).isEqualTo(all.code());
        assertThat(stops.out()).doesNotContain("\"severity\": \"note\"");
    }

    @Test
    void a_file_that_is_not_there_is_a_problem_of_that_file() {
        Run run = Run.of("check", "no-such-job.json", "--json");
        assertThat(run.code()).isEqualTo(2);
        assertThat(broken(run.out())).isEmpty();
    }
}

package setwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.file.json.Json;

class CommandsTest {
    private static final String BLOCK = "demo-jobs/bearing-block.setwright.json";

    @ParameterizedTest
    @ValueSource(strings = {"open", "check", "sheet", "kit", "compare", "figure", "explain", "shop", "schema"})
    void every_command_says_what_it_takes(String command) {
        Run run = Run.of(command, "--help");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Usage: setwright " + command, "--units", "--shop");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void the_program_itself_says_which_commands_there_are() {
        assertThat(Run.of("--help").out()).contains("check", "figure", "explain");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"frobnicate", "check", "schema car", "explain sliding", "shop list cars", "check x --units ell"})
    void what_cannot_be_done_is_said_on_standard_error_and_ends_with_two(String words) {
        Run run = Run.of(words.split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isNotBlank().doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"job", "shop", "check"})
    void a_schema_is_json(String kind) {
        Run run = Run.of("schema", kind);
        assertThat(run.code()).isZero();
        assertThat(Json.read(run.out()).problems()).isEmpty();
    }

    @Test
    void explain_prints_the_page_of_a_caution() {
        Run run = Run.of("explain", "slides-in-grip");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Why it matters", "What to do", "Source");
    }

    @Test
    void the_shop_is_counted_and_listed() {
        assertThat(Run.of("shop").out()).contains("machine", "cutter", "parallels");
        assertThat(Run.of("shop", "list", "machine").out()).contains("knee-mill-r8-9x49");
    }

    @Test
    void a_sheet_is_written_as_text_and_other_endings_name_what_there_is(@TempDir Path folder) throws IOException {
        Path sheet = folder.resolve("sheet.txt");
        assertThat(Run.of("sheet", BLOCK, "-o", sheet.toString()).code()).isZero();
        assertThat(Files.readString(sheet)).contains("Bearing block");
        Run other = Run.of("sheet", BLOCK, "-o", folder.resolve("sheet.doc").toString());
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err()).contains(".txt");
    }

    @Test
    void the_kit_stands_by_the_place_where_it_is_kept() {
        assertThat(Run.of("kit", BLOCK).out()).contains("Reamer 12 H7").doesNotContain("6 in vise");
    }

    @Test
    void two_jobs_that_differ_end_with_one_and_say_where(@TempDir Path folder) throws IOException {
        Path other = folder.resolve("other.json");
        Files.writeString(other, Files.readString(Path.of(BLOCK)).replace("\"numberOff\": 12", "\"numberOff\": 20"));
        assertThat(Run.of("compare", BLOCK, BLOCK).code()).isZero();
        Run differs = Run.of("compare", BLOCK, other.toString());
        assertThat(differs.code()).isEqualTo(1);
        assertThat(differs.out()).contains("12 -> 20");
        assertThat(Run.of("compare", BLOCK, other.toString(), "--json").out())
                .contains("\"old\": \"12\"", "\"effect\": {\"time\": 0.0");
        assertThat(Run.of("compare", BLOCK, folder.resolve("none.json").toString())
                        .code())
                .isEqualTo(2);
    }

    @Test
    void open_hands_the_job_to_the_window() {
        assertThat(Run.of("open", BLOCK).opened()).isEqualTo(List.of(Optional.of(Path.of(BLOCK))));
        assertThat(Run.of("open").opened()).isEqualTo(List.of(Optional.empty()));
    }

    @Test
    void what_is_printed_is_utf_8_whatever_the_locale() {
        assertThat(Run.of("figure", "removal-rate", "width=10", "depth=2", "feed=100")
                        .out())
                .contains("cm³/min");
    }
}

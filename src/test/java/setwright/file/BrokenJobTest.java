package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.file.json.Problem;

/** Every way in which a job's file can be broken gives one report, with places, and the file stays as it is. */
class BrokenJobTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @MethodSource("setwright.file.Breakages#edits")
    void an_edit_that_breaks_the_job_gives_its_one_problem_at_its_place(Breakages.Edit edit) throws IOException {
        String text = edit.text();

        List<Problem> problems = refused(text.getBytes(StandardCharsets.UTF_8));

        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.message()).contains(edit.says()).endsWith(".");
            assertThat(problem.path()).isEqualTo(edit.path());
            assertThat(place(problem)).isEqualTo(place(text, edit.at()));
        });
    }

    @Test
    void all_problems_are_told_at_once_in_the_order_of_the_lines() throws IOException {
        String text = Breakages.GOOD;
        for (Breakages.Edit edit : List.of(
                new Breakages.Edit("\"numberOff\": 12", "\"numberOff\": 0", "", "", ""),
                new Breakages.Edit("\"83 mm\"", "\"81 mm\"", "", "", ""),
                new Breakages.Edit("\"finish\": \"3.2 um\"", "\"finish\": \"3.2 kg\"", "", "", ""),
                new Breakages.Edit("\"cutter\": \"end-mill-16\"", "\"cutter\": \"end-mil-16\"", "", "", ""),
                new Breakages.Edit("\"stickOut\"", "\"stikOut\"", "", "", ""),
                new Breakages.Edit("\"offset\": \"-5 mm\"", "\"offset\": -5, \"offset\": 5", "", "", ""),
                new Breakages.Edit("\"kind\": \"reamer\"", "\"kind\": \"broach\"", "", "", ""))) {
            text = text.replaceFirst(Pattern.quote(edit.from()), edit.to());
        }

        assertThat(refused(text.getBytes(StandardCharsets.UTF_8)))
                .extracting(Problem::path)
                .containsExactly(
                        "plan/numberOff",
                        "plan/blank/length/greatest",
                        "plan/features[0]/finish",
                        "plan/setUps[0]/holding/offset",
                        "plan/setUps[0]/holding/offset",
                        "plan/setUps[0]/operations[0]/cutter",
                        "plan/setUps[0]/operations[0]/stikOut",
                        "plan/rows[8]/kind");
    }

    @Test
    void a_file_that_was_cut_short_says_where_it_ends_and_what_is_open() throws IOException {
        String text = Breakages.GOOD.substring(0, Breakages.GOOD.indexOf("\"depth\""));

        assertThat(refused(text.getBytes(StandardCharsets.UTF_8)))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.line()).isEqualTo((int) text.lines().count());
                    assertThat(problem.message())
                            .contains("3 brackets are still open", "the innermost since line 9, column 14");
                });
    }

    @Test
    @Timeout(10)
    void ten_megabytes_of_brackets_are_answered_at_once() throws IOException {
        byte[] brackets = "[".repeat(10 * 1024 * 1024).getBytes(StandardCharsets.UTF_8);

        assertThat(refused(brackets)).singleElement().satisfies(problem -> {
            assertThat(place(problem)).isEqualTo("1:62");
            assertThat(problem.message()).contains("deeper than 60");
        });
    }

    @Test
    @Timeout(10)
    void a_file_beyond_the_limit_is_not_read_at_all() throws IOException {
        byte[] large = new byte[10 * 1024 * 1024 + 1];

        assertThat(refused(large)).singleElement().satisfies(problem -> {
            assertThat(place(problem)).isEqualTo("0:0");
            assertThat(problem.message()).contains("larger than 10 MB");
        });
    }

    @Test
    @Timeout(20)
    void of_a_great_many_problems_the_first_hundred_are_told_and_the_rest_counted() throws IOException {
        String text =
                Breakages.GOOD.replaceFirst("\"features\": \\[\n", "\"features\": [" + "0,".repeat(10_000) + "\n");

        List<Problem> problems = refused(text.getBytes(StandardCharsets.UTF_8));

        assertThat(problems).hasSize(101);
        assertThat(problems.get(100).message()).matches("\\d{4} more problems were found; these come first.");
    }

    static Stream<Arguments> starts() {
        return Stream.of(
                arguments("", "1:1", "The file is empty."),
                arguments(" \n\n ", "1:1", "The file is empty."),
                arguments("Bearing block, 12 off", "1:1", "Found the character B; accepted here: a text in double"),
                arguments("<job/>", "1:1", "Found the character <"),
                arguments("\u0000\u0000\u0000", "1:1", "Found the character with code 0"),
                arguments("[]", "1:1", "Found a list in [ ]; accepted here: an object with \"format\""),
                arguments("\"setwright job\"", "1:1", "Found the text \"setwright job\""),
                arguments("{\"format\": \"letter\"}", "1:12", "its \"format\" is the text \"letter\""),
                arguments("{} {}", "1:4", "The file goes on after its closing bracket"),
                arguments("{}}", "1:3", "nothing more, for every bracket is closed"),
                arguments("// a job\n{}", "1:1", "comments are not read"),
                arguments("{'a': 1}", "1:2", "a key in double quotes"),
                arguments("{\"a\" 1}", "1:6", "a colon between key and value"),
                arguments("[1 2]", "1:4", "a comma before the next value"),
                arguments("[1}", "1:3", "], which closes the list"),
                arguments("{\"a\": \"b\nc\"}", "1:9", "an escape such as"),
                arguments("[\"\\q\"]", "1:4", "after the backslash"),
                arguments("[NaN]", "1:5", "a text in double quotes, a number"),
                arguments("{\"a\": \"b", "1:9", "it has been cut short"));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void what_is_no_job_at_all_gives_one_problem(String text, String place, String says) throws IOException {
        assertThat(refused(text.getBytes(StandardCharsets.UTF_8)))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.message()).contains(says).endsWith(".");
                    assertThat(place(problem)).isEqualTo(place);
                });
    }

    @Test
    void a_byte_order_mark_of_utf_8_is_passed_over_and_utf_16_is_named() throws IOException {
        byte[] marked = ("\uFEFF" + Breakages.GOOD).getBytes(StandardCharsets.UTF_8);
        Path file = Files.write(folder.resolve("marked.setwright.json"), marked);
        assertThat(JobFile.read(file, Samples.shop())).isInstanceOf(JobRead.Opened.class);

        assertThat(refused(("\uFEFF" + Breakages.GOOD).getBytes(StandardCharsets.UTF_16LE)))
                .extracting(Problem::message)
                .containsExactly("The file is written in UTF-16; save it as UTF-8, which alone is read.");
        assertThat(refused((Breakages.GOOD + "\uFEFF").getBytes(StandardCharsets.UTF_8)))
                .extracting(Problem::message)
                .singleElement()
                .asString()
                .contains("code 65279");
    }

    @Test
    void bytes_that_are_no_utf_8_are_shown_where_they_stand() throws IOException {
        byte[] bytes = Breakages.GOOD.getBytes(StandardCharsets.UTF_8);
        int at = Breakages.GOOD.indexOf("Bearing block");
        bytes[at] = (byte) 0xD8;

        assertThat(refused(bytes)).singleElement().satisfies(problem -> {
            assertThat(place(problem)).isEqualTo(place(Breakages.GOOD, "Bearing block"));
            assertThat(problem.message()).contains("the byte d8");
        });
    }

    @Test
    void a_folder_and_a_file_that_is_not_there_are_named() {
        Path missing = folder.resolve("none.setwright.json");

        assertThat(JobFile.read(folder, Samples.shop()))
                .isEqualTo(new JobRead.Refused(
                        List.of(new Problem(0, 0, "", folder + " is a folder; name a file in it."))));
        assertThat(JobFile.read(missing, Samples.shop()))
                .isEqualTo(new JobRead.Refused(List.of(new Problem(0, 0, "", "There is no file " + missing + "."))));
    }

    /** The problems with a file of these bytes; the file is the same afterwards, and nothing lies beside it. */
    private List<Problem> refused(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("broken.setwright.json"), bytes);
        JobRead read = JobFile.read(file, Samples.shop());
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
        assertThat(folder).isDirectoryNotContaining("glob:**/broken.setwright.json?*");
        assertThat(read).isInstanceOf(JobRead.Refused.class);
        return ((JobRead.Refused) read).problems();
    }

    private static String place(Problem problem) {
        return problem.line() + ":" + problem.column();
    }

    /** Counted by hand of this test: lines before it, characters after the last line feed. */
    private static String place(String text, String sought) {
        assertThat(text).contains(sought);
        String before = text.substring(0, text.indexOf(sought));
        return (before.split("\n", -1).length) + ":" + (before.length() - before.lastIndexOf('\n'));
    }
}

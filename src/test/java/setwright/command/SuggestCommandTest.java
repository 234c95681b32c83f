package setwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.file.json.Json;
import setwright.file.json.Tree;

class SuggestCommandTest {
    private static final String JOB = "demo-jobs/everyday/stop-block.setwright.json";

    @TempDir
    Path folder;

    @Test
    void the_rankings_of_a_set_up_are_printed_within_100_columns() {
        Run run = Run.of("suggest", JOB);

        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Holding, the best first")
                .contains("Dropped")
                .contains("Holder for");
        assertThat(run.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void json_keeps_to_its_keys_and_every_key_is_always_there() {
        Tree.JsonObject answer = object(Run.of("suggest", JOB, "--json").out());

        assertThat(keys(answer)).containsExactly("setUp", "holdings", "holders");
        List<Tree> holdings = items(answer, "holdings");
        assertThat(holdings)
                .hasSizeGreaterThan(20)
                .allSatisfy(each -> assertThat(keys((Tree.JsonObject) each))
                        .containsExactly("rank", "holding", "text", "kept", "reasons", "holdFactor", "time"));
        assertThat(items(answer, "holders")).isNotEmpty().allSatisfy(each -> {
            Tree.JsonObject of = (Tree.JsonObject) each;
            assertThat(keys(of)).containsExactly("operation", "ranked");
            assertThat(items(of, "ranked"))
                    .isNotEmpty()
                    .allSatisfy(one -> assertThat(keys((Tree.JsonObject) one))
                            .containsExactly("rank", "holder", "kept", "reasons"));
        });
    }

    @Test
    void taking_one_writes_the_job_with_it_and_the_reason_stays() throws Exception {
        Path file = folder.resolve("taken.setwright.json");
        Run run = Run.of(
                "suggest", JOB, "--take", "2", "-o", file.toString(), "--because", "the other one is being scraped");

        assertThat(run.code()).isZero();
        assertThat(Files.readString(file)).contains("the other one is being scraped");
        assertThat(Run.of("suggest", file.toString()).out()).contains("(now, because the other one is being scraped)");
        assertThat(Run.of("compare", JOB, file.toString()).code()).isEqualTo(1);
    }

    @Test
    void what_is_dropped_is_not_taken_and_says_why() {
        Run run = Run.of(
                "suggest",
                JOB,
                "--take",
                "30",
                "-o",
                folder.resolve("x.setwright.json").toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("is dropped: ");
    }

    @Test
    void what_does_not_go_together_is_said() {
        assertThat(Run.of("suggest", JOB, "--take", "2").err()).contains("go together");
        assertThat(Run.of("suggest", JOB, "--set-up", "9").err())
                .contains("has no set-up 9")
                .contains("s1");
        assertThat(Run.of("suggest", "no-such.json").code()).isEqualTo(2);
    }

    private static Tree.JsonObject object(String text) {
        return (Tree.JsonObject) Json.read(text).tree().orElseThrow();
    }

    private static List<String> keys(Tree.JsonObject object) {
        return object.members().stream().map(Tree.Member::key).toList();
    }

    private static List<Tree> items(Tree.JsonObject object, String key) {
        Tree value = object.members().stream()
                .filter(member -> member.key().equals(key))
                .findFirst()
                .orElseThrow()
                .value();
        return ((Tree.JsonArray) value).items();
    }
}

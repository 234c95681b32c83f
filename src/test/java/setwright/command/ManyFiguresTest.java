package setwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.Rounds;
import setwright.figures.BenchQuestions;
import setwright.file.json.Json;
import setwright.file.json.Tree;

/** A long list of questions on standard input, good ones and bad ones mixed. */
class ManyFiguresTest {
    private static final int MANY = 1000;

    /** Ten times what it should take. */
    private static final Duration GUARD = Duration.ofSeconds(20);

    private static final List<String> BAD_VALUES = List.of(
            "NaN",
            "Infinity",
            "-Infinity",
            "0",
            "-1",
            "1e9",
            "1000000000",
            "1e308",
            "1e-308",
            "1/0",
            "Ø",
            "12,5",
            "=",
            "''",
            "mm",
            "1 2 3",
            "9999999999999999999999",
            "M0",
            "zzz",
            "0.1,0.1,0.1",
            "-0",
            "10000",
            "90",
            "180",
            "360");

    @Test
    void a_thousand_mixed_questions_each_get_their_line() {
        List<String> questions = mixed(31);
        assertThat(Run.with("spindle-speed cutting-speed=30 diameter=12", "figure", "-", "--json")
                        .code())
                .isZero();
        long before = System.nanoTime();

        Run run = Run.with(String.join("\n", questions) + "\n", "figure", "-", "--json");

        assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(GUARD);
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSameSizeAs(questions);
        for (int i = 0; i < MANY; i++) {
            Tree.JsonObject answer =
                    (Tree.JsonObject) Json.read(lines.get(i)).tree().orElseThrow();
            assertThat(answer.text("figure").orElse(""))
                    .as(questions.get(i))
                    .isIn("", questions.get(i).split(" ")[0]);
            if (answer.text("error").isEmpty()) {
                assertThat(lines.get(i)).as(questions.get(i)).doesNotContain("NaN", "Infinity");
            }
            if (i % 2 == 0) {
                assertThat(answer.text("error")).as(questions.get(i)).isEmpty();
            }
        }
    }

    /** Every second one is as it should be; in the others one blank is filled wrongly, left out or called otherwise. */
    private static List<String> mixed(long seed) {
        List<String> good = BenchQuestions.all();
        List<String> mixed = new ArrayList<>();
        RandomGenerator random = Rounds.random(seed);
        for (int i = 0; i < MANY; i++) {
            String question = good.get((i / 2) % good.size());
            mixed.add(i % 2 == 0 ? question : spoilt(question, random));
        }
        return mixed;
    }

    private static String spoilt(String question, RandomGenerator random) {
        String[] words = question.split(" ");
        int at = random.nextInt(words.length);
        String key = words[at].contains("=") ? words[at].substring(0, words[at].indexOf('=')) : "";
        words[at] = switch (random.nextInt(6)) {
            case 0 -> "";
            case 1 -> words[at].replaceFirst("[a-z]", "q");
            default -> key + "=" + BAD_VALUES.get(random.nextInt(BAD_VALUES.size()));
        };
        return String.join(" ", words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spindle-sped cutting-speed=30 diameter=12 | There is no figure 'spindle-sped'",
                "spindle-speed cutting-speed=30 | diameter: it is missing",
                "spindle-speed cutting-speed=NaN diameter=12 | cutting-speed",
                "index-plain divisions=0 | divisions: '0' is not accepted; accepted: a whole number from 1 to 10000.",
                "bolt-circle holes=1000000000 diameter=100 | holes: '1000000000' is not accepted",
                "gauge-stack height=0.1 set=88-metric | height",
                "angle-blocks angle=400 | angle",
                "sine-bar angle=75 length=100 | angle",
                "index-plain divisions=127 | index-differential",
                "hold-balance file=no-such.json | file"
            })
    void a_bad_question_gets_its_line_and_the_next_its_answer(String bad, String said) {
        Run run = Run.with(bad + "\nspindle-speed cutting-speed=30 diameter=12\n", "figure", "-", "--json");

        List<String> lines = run.out().lines().toList();
        assertThat(run.code()).isZero();
        assertThat(lines).hasSize(2);
        assertThat(((Tree.JsonObject) Json.read(lines.get(0)).tree().orElseThrow())
                        .text("error")
                        .orElse(""))
                .contains(said);
        assertThat(lines.get(1)).contains("\"figure\": \"spindle-speed\"");
    }
}

package setwright.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.figures.Figure;
import setwright.figures.Figures;
import setwright.window.model.BenchPage;
import setwright.window.model.Field;
import setwright.window.model.Line;
import setwright.window.model.Span;

class BenchDeskTest {
    private static final int FEW_KEYS = 14;

    @TempDir
    Path folder;

    private TestDesk test;

    @BeforeEach
    void open() {
        test = new TestDesk(folder);
        test.settled();
        test.desk().bench().open();
    }

    @AfterEach
    void close() {
        test.close();
    }

    @ParameterizedTest
    @CsvSource({
        "rpm 25 12, spindle-speed",
        "edge 10, touch-off",
        "hex 6 20, across-flats",
        "pcd 6 80, bolt-circle",
        "flats 6 30, across-flats",
        "index 28, index-plain",
        "gear 40 2, gear-cutter",
        "tap M8, tap-drill"
    })
    void a_question_in_the_words_of_the_trade_finds_its_figure(String typed, String figure) {
        test.desk().bench().search(typed);

        assertThat(page().figure()).isEqualTo(figure);
    }

    @Test
    void what_was_asked_last_is_kept_with_the_settings() {
        test.desk().bench().search("key 40");
        test.desk().bench().close();
        test.desk().bench().open();
        test.desk().bench().search("tap");
        test.desk().bench().choose("");

        assertThat(test.desk().settings().figures()).startsWith("tap-drill", "key");
    }

    /** One key opens the page; then the letters of the search, Enter, and each blank with an Enter between. */
    @ParameterizedTest
    @CsvSource({
        "tap, tap-drill, M8, drill, 6.8 mm",
        "cl, clearance-hole, M6, hole, 6.6",
        "bolt, bolt-circle, 6 80, chord, 40",
        "fit, fit, 25 H7, upper, 21",
        "sine, sine-bar, 22.5 100, height, 38.268",
        "key, key, 40, width, 12",
        "v, v-block-height, 50, centre above apex, 35.355",
        "thr, thread, 1/4-20, pitch, 1.27",
        "drill s, drill-size, #7, mm, 5.105",
        "an, angle-blocks, 59.25, built, 59.25",
        "sp, spindle-speed, 30 12, speed, 796",
        "ga, gauge-stack, 38.268 88-metric, blocks, 30"
    })
    void an_everyday_question_is_answered_within_a_few_keys(
            String search, String figure, String blanks, String answer, String wanted) {
        List<String> typed = List.of(blanks.split(" "));
        BenchActions actions = test.desk().bench();
        actions.search(search);
        assertThat(page().found().get(0).name()).isEqualTo(figure);
        actions.choose("");
        for (int i = 0; i < typed.size(); i++) {
            actions.typed(page().blanks().get(i).key(), typed.get(i));
        }
        assertThat(page().answers()).anySatisfy(each -> {
            assertThat(each.name()).isEqualTo(answer);
            assertThat(each.printed()).contains(wanted);
        });
        int keys = 1 + search.length() + 1 + String.join(" ", typed).length();
        assertThat(keys).isLessThanOrEqualTo(figure.equals("gauge-stack") ? 20 : FEW_KEYS);
    }

    @ParameterizedTest
    @CsvSource({
        "tap drill M6, tap-drill, drill, 5 mm",
        "spindle speed 30 12, spindle-speed, speed, 796",
        "fit 25 H7, fit, upper, 21",
        "sine bar 30 100, sine-bar, height, 50"
    })
    void what_follows_the_name_stands_in_the_blanks(String search, String figure, String answer, String wanted) {
        test.desk().bench().search(search);

        assertThat(page().figure()).isEqualTo(figure);
        assertThat(page().answers()).anySatisfy(each -> {
            assertThat(each.name()).isEqualTo(answer);
            assertThat(each.printed()).contains(wanted);
        });
    }

    @Test
    void more_values_than_blanks_are_no_question() {
        test.desk().bench().search("spindle speed 1 2 3 4 5 6");

        assertThat(page().figure()).isEmpty();
        assertThat(page().found()).isEmpty();
    }

    @Test
    void every_figure_is_found_by_its_name() {
        for (Figure figure : Figures.all()) {
            test.desk().bench().search(figure.name());
            assertThat(page().found().get(0).name()).isEqualTo(figure.name());
        }
    }

    @Test
    void what_is_missing_is_asked_and_what_cannot_be_read_says_why() {
        test.desk().bench().choose("spindle-speed");
        assertThat(page().said()).isEqualTo("Still asked: cutting speed, diameter");
        test.desk().bench().typed("cutting-speed", "30");
        test.desk().bench().typed("diameter", "wide");
        assertThat(page().answers()).isEmpty();
        assertThat(page().said()).startsWith("diameter: ");
        test.desk().bench().typed("diameter", "12");
        assertThat(page().sentence()).isEqualTo("A cutter of 12 that cuts at 30 turns at");
        assertThat(page().worked()).contains("1000");
        assertThat(page().copied()).isEqualTo("A cutter of 12 that cuts at 30 turns at: speed 796 rev/min.");
    }

    @Test
    void the_figures_asked_last_come_first_where_nothing_is_typed() {
        test.desk().bench().choose("tram");
        test.desk().bench().choose("key");
        test.desk().bench().open();
        assertThat(page().found()).extracting(BenchPage.Found::name).startsWith("key", "tram");
        test.desk().bench().close();
        assertThat(page().open()).isFalse();
    }

    @Test
    void the_unfolded_operation_takes_an_answer_over_as_ink() {
        Line drill = test.desk().screen().card().lines().stream()
                .filter(line -> Span.spoken(line.what()).startsWith("Drill"))
                .findFirst()
                .orElseThrow();
        test.desk().card().choose(drill.key());
        test.settled();
        test.desk().bench().choose("spindle-speed");
        test.desk().bench().typed("cutting-speed", "30");
        test.desk().bench().typed("diameter", "12");
        assertThat(page().uses()).containsExactly(new BenchPage.Use("speed", "796 rev/min"));

        test.desk().bench().use("speed");

        Field speed = test.settled().card().unfolded().fields().stream()
                .flatMap(List::stream)
                .filter(field -> field.key().equals("speed"))
                .findFirst()
                .orElseThrow();
        assertThat(speed.text()).contains("796");
        assertThat(speed.standing()).isEqualTo(setwright.job.Standing.INKED);
        assertThat(page().open()).isFalse();
    }

    private BenchPage page() {
        return test.desk().screen().bench();
    }
}

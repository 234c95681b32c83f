package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.job.Job;
import setwright.quantity.UnitSystem;

class MessageStyleTest {
    private static final Pattern LONG_NUMBER = Pattern.compile("\\d+\\.\\d{5,}|\\d{6,}|\\d{3,}[1-9]\\d|\\d{4,}[1-9]");

    private static final List<Caution> CAUTIONS = produced().distinct().toList();

    static List<Caution> cautions() {
        return CAUTIONS;
    }

    private static Stream<Caution> produced() {
        return Stream.concat(Cases.all().stream().flatMap(one -> Stream.of(one.fires(), one.nearly())), others())
                .flatMap(bench -> Stream.of(bench, bench.with(MessageStyleTest::inInches)))
                .flatMap(bench -> bench.findings().cautions().stream());
    }

    private static Stream<Bench> others() {
        return Stream.of(
                Cases.thickParallels(0.3),
                Cases.stubDrillOut(36),
                Cases.facing(SmallCutters.PLAIN_END_MILL, SmallHolders.END_MILL_HOLDER),
                Cases.underPower(Cases.drilledTo(20)));
    }

    private static Job inInches(Job job) {
        return job.withPlan(job.plan().withUnits(UnitSystem.INCH));
    }

    static Stream<String> offered() {
        return Cases.all().stream()
                .filter(Cases.Case::hasRemedies)
                .flatMap(one -> one
                        .fires()
                        .remedies(one.fires().found(one.slug()).get(0))
                        .stream()
                        .map(Remedy::text));
    }

    @ParameterizedTest
    @MethodSource("cautions")
    void a_message_is_made_of_sentences_in_the_words_of_the_house(Caution caution) {
        assertThat(HouseWords.against(caution.message())).isEmpty();
        assertThat(caution.message()).matches("(?s)[A-Z].*\\.").doesNotContain("  ", "..", "null", "NaN");
    }

    @ParameterizedTest
    @MethodSource("cautions")
    void a_message_says_where(Caution caution) {
        assertThat(caution.message()).contains(caution.place().address());
    }

    @ParameterizedTest
    @MethodSource("cautions")
    void a_message_says_by_how_much_where_there_is_a_figure(Caution caution) {
        String said = caution.message().replaceAll("\\([^)]*\\)", "");
        Figure figure = caution.figure();

        if (figure != null && !figure.unit().symbol().isEmpty()) {
            assertThat(said).containsPattern("\\d+(\\.\\d+)? (mm|in|rev/min|kW|hp|N|kN|lbf|kg|lb)\\b");
        } else if (figure != null) {
            assertThat(said).containsPattern("\\d+(\\.\\d+)? times");
        }
        assertThat(LONG_NUMBER.matcher(said).find()).as(said).isFalse();
    }

    @ParameterizedTest
    @MethodSource("cautions")
    void a_message_says_what_to_do(Caution caution) {
        List<String> doing = List.of("take", "grip", "bring", "drill", "change", "more stick-out", "less stick-out");
        assertThat(caution.message().toLowerCase(java.util.Locale.ROOT))
                .containsPattern("[:.,] (or )?(" + String.join("|", doing) + ")");
    }

    @ParameterizedTest
    @MethodSource("offered")
    void a_remedy_is_one_sentence_that_begins_with_what_the_hand_does(String text) {
        assertThat(HouseWords.against(text)).isEmpty();
        assertThat(text).matches("(Take|Push|Close|Set|Give|Hold|Drill) .*\\.").doesNotContain("  ", "null");
    }

    @Test
    void on_screen_a_stop_reads_do_not_run() {
        assertThat(Severity.STOP.onScreen()).isEqualTo("do not run");
        assertThat(Severity.STOP.written()).isEqualTo("stop");
    }
}

package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.plan.BearingBlock;
import setwright.plan.Planner;
import setwright.shop.Shop;

/** Set-ups that any toolroom runs without thought: a caution on an ordinary cut is a defect. */
class QuietListTest {
    private static final Shop SHOP = BearingBlock.shop();

    static List<Path> everyday() {
        try (Stream<Path> files = Files.list(Path.of("demo-jobs/everyday"))) {
            return files.sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Findings judged(Path job) {
        return Judge.judge(Planner.plan(BearingBlock.job(job, SHOP), SHOP));
    }

    @ParameterizedTest
    @MethodSource("everyday")
    void an_everyday_set_up_has_no_stop_and_at_most_two_cautions(Path job) {
        Findings findings = judged(job);
        assertThat(findings.open(Severity.STOP)).isEmpty();
        assertThat(findings.open(Severity.CAUTION)).hasSizeLessThanOrEqualTo(2);
    }

    /** Run with {@code -Deveryday=write} to write down what is counted now. */
    @Test
    void the_pages_say_how_often_each_check_speaks_about_them() throws IOException {
        List<Findings> all = everyday().stream().map(QuietListTest::judged).toList();
        List<Everyday.Count> counts = Checks.slugs().stream()
                .map(slug -> new Everyday.Count(slug, speaks(all, slug, false), speaks(all, slug, true)))
                .filter(count -> count.fires() + count.notes() > 0)
                .toList();
        Everyday now = new Everyday(all.size(), counts);
        if ("write".equals(System.getProperty("everyday"))) {
            Files.writeString(Path.of("src/main/resources/setwright/caution/everyday.txt"), now.text());
        } else {
            assertThat(Everyday.counted().text()).isEqualTo(now.text());
        }
    }

    private static int speaks(List<Findings> all, String slug, boolean asNote) {
        return (int) all.stream()
                .filter(findings ->
                        findings.any(one -> one.slug().equals(slug) && asNote == (one.severity() == Severity.NOTE)))
                .count();
    }

    @ParameterizedTest
    @MethodSource("everyday")
    void everything_of_an_everyday_set_up_can_be_looked_at(Path job) {
        assertThat(judged(job).notChecked()).isEmpty();
    }

    @Test
    void half_of_the_everyday_set_ups_have_one_caution_at_most() {
        List<Integer> counts = everyday().stream()
                .map(job -> judged(job).open(Severity.CAUTION).size())
                .sorted()
                .toList();
        assertThat(counts).hasSizeGreaterThanOrEqualTo(3);
        assertThat(counts.get(counts.size() / 2)).isLessThanOrEqualTo(1);
    }

    @Test
    void the_plain_bearing_block_has_nothing_that_stops_it() {
        Findings findings = judged(Path.of("demo-jobs/bearing-block.setwright.json"));
        assertThat(findings.open(Severity.STOP)).isEmpty();
        assertThat(findings.open(Severity.CAUTION)).isEmpty();
        assertThat(findings.notChecked()).isEmpty();
    }
}

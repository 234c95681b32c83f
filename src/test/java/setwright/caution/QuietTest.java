package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.job.Job;

/** Set-ups that any toolroom runs without thought. */
class QuietTest {
    static List<Job> everyday() {
        return SmallJobs.everyday();
    }

    @ParameterizedTest
    @MethodSource("everyday")
    void an_everyday_set_up_has_no_stop_and_at_most_two_cautions(Job job) {
        Findings findings = Bench.of(job).findings();

        assertThat(findings.open(Severity.STOP)).isEmpty();
        assertThat(findings.open(Severity.CAUTION)).hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void half_of_them_have_at_most_one_caution() {
        List<Integer> counts = everyday().stream()
                .map(job -> Bench.of(job).findings().open(Severity.CAUTION).size())
                .sorted()
                .toList();

        assertThat(counts.get(counts.size() / 2)).isLessThanOrEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("everyday")
    void nothing_is_left_unlooked_at(Job job) {
        assertThat(Bench.of(job).findings().notChecked()).isEmpty();
    }
}

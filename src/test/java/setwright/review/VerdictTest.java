package setwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.caution.Acceptances;
import setwright.caution.Bench;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.HouseWords;
import setwright.caution.Severity;
import setwright.caution.SmallJobs;
import setwright.caution.SmallShop;
import setwright.job.JobRecord.Role;
import setwright.job.ViseField;
import setwright.plan.NotChecked;

class VerdictTest {
    private static final Bench BLOCK = Bench.of(SmallJobs.bearingBlock());

    private static Bench thick() {
        return BLOCK.ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .ink(ViseField.PARALLEL_INSET, SmallJobs.mm("2 mm"));
    }

    private static NotChecked lacks(String check, String needs) {
        return new NotChecked(check, "s1", "h2-tap", needs);
    }

    @Test
    void a_plan_in_which_nothing_was_found_is_not_called_more_than_that() {
        Findings findings = BLOCK.findings();
        Verdict verdict = Verdict.of(findings);

        assertThat(verdict.stops()).isZero();
        assertThat(verdict.sentence())
                .isEqualTo("Nothing found that stops this plan. " + findings.looked() + " checks looked.");
        assertThat(HouseWords.against(verdict.sentence())).isEmpty();
    }

    @Test
    void a_stop_says_do_not_run_and_why() {
        assertThat(Verdict.of(thick().findings()).found())
                .isEqualTo("Do not run: Tap M8, spiral point goes 1.35 mm into the front parallel below hole 1 of 4"
                        + " (s1/h2-tap).");
    }

    @Test
    void what_could_not_look_is_counted_with_its_reason() {
        Findings findings = new Findings(
                List.of(),
                List.of(
                        lacks("tool-springs", "a row of cutting speeds"),
                        lacks("slides-in-grip", "a row of cutting speeds"),
                        lacks("tap-bottoms", "the tap")),
                58,
                List.of());

        assertThat(Verdict.of(findings).sentence())
                .isEqualTo("Nothing found that stops this plan. 58 checks looked,"
                        + " 3 could not (2 need a row of cutting speeds; needs the tap).");
    }

    @Test
    void a_stop_that_the_lead_accepted_is_still_said() {
        Caution stop = thick().findings().open(Severity.STOP).get(0);
        Bench accepted = thick().with(job -> job.withRecord(
                job.record().accepting(Acceptances.of(stop, Role.LEAD, "M. Keller", "old parallels", "2024-05-02"))));

        assertThat(Verdict.of(accepted.findings()).found())
                .isEqualTo("Nothing found that stops this plan but one that the lead accepted.");
        assertThat(Verdict.of(accepted.findings()).accepted()).isEqualTo(1);
    }

    @Test
    void cautions_are_counted_beside() {
        Bench near = BLOCK.ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .ink(ViseField.PARALLEL_INSET, SmallJobs.mm("0.3 mm"));

        assertThat(Verdict.of(near.findings()).found()).isEqualTo("Nothing found that stops this plan. 1 caution.");
    }
}

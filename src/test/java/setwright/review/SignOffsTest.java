package setwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import setwright.caution.Bench;
import setwright.caution.SmallJobs;
import setwright.job.JobRecord;
import setwright.job.JobRecord.Sign;
import setwright.job.OperationField;
import setwright.review.SignOffs.Fit;

class SignOffsTest {
    private static final Bench BLOCK = Bench.of(SmallJobs.bearingBlock());

    private static Fingerprint of(Bench bench) {
        return Fingerprint.of(bench.plan(), bench.job().plan().toString());
    }

    private static JobRecord signed(JobRecord record, Sign sign, Fingerprint on) {
        return record.signing(SignOffs.sign(sign, "M. Keller", "2024-05-02", on));
    }

    @Test
    void what_nobody_signed_is_to_be_signed_in_its_order() {
        SignOffs none = SignOffs.of(JobRecord.EMPTY, of(BLOCK));

        assertThat(none.states()).extracting(SignOffs.State::fit).containsOnly(Fit.UNSIGNED);
        assertThat(none.next()).contains(Sign.PLANNED);
        assertThat(none.of(Sign.CHECKED).words()).isEqualTo("Checked: not signed.");
    }

    @Test
    void a_name_under_this_plan_fits() {
        JobRecord record = signed(JobRecord.EMPTY, Sign.PLANNED, of(BLOCK));

        assertThat(SignOffs.of(record, of(BLOCK)).of(Sign.PLANNED).fit()).isEqualTo(Fit.FITS);
        assertThat(SignOffs.of(record, of(BLOCK)).next()).contains(Sign.CHECKED);
        assertThat(SignOffs.of(record, of(BLOCK)).of(Sign.PLANNED).words())
                .isEqualTo("Planned: M. Keller, 2024-05-02.");
    }

    @Test
    void after_an_edit_it_fits_no_more_and_says_what_changed() {
        JobRecord record = signed(JobRecord.EMPTY, Sign.PLANNED, of(BLOCK));
        Bench edited = BLOCK.ink("h2-drill", OperationField.SPEED, SmallJobs.speed("660 rev/min"));
        SignOffs.State state = SignOffs.of(record, of(edited)).of(Sign.PLANNED);

        assertThat(state.fit()).isEqualTo(Fit.CHANGED);
        assertThat(state.changed()).startsWith(Fingerprint.Part.JOB);
        assertThat(state.words()).startsWith("Planned: M. Keller, 2024-05-02; since then changed: the job, ");
    }

    @Test
    void the_latest_name_counts_and_the_same_may_stand_twice() {
        Bench edited = BLOCK.ink("h2-drill", OperationField.SPEED, SmallJobs.speed("660 rev/min"));
        JobRecord record = signed(JobRecord.EMPTY, Sign.PLANNED, of(BLOCK));
        record = signed(record, Sign.PLANNED, of(edited));
        record = signed(record, Sign.CHECKED, of(edited));

        assertThat(SignOffs.of(record, of(edited)).of(Sign.PLANNED).fit()).isEqualTo(Fit.FITS);
        assertThat(SignOffs.of(record, of(edited)).of(Sign.CHECKED).fit()).isEqualTo(Fit.FITS);
        assertThat(SignOffs.of(record, of(edited)).next()).contains(Sign.RELEASED_FOR_FIRST_PART);
    }

    @Test
    void signing_does_not_change_what_is_signed() {
        JobRecord record = signed(JobRecord.EMPTY, Sign.PLANNED, of(BLOCK));
        Bench signed = BLOCK.with(job -> job.withRecord(record));

        assertThat(SignOffs.of(record, of(signed)).of(Sign.PLANNED).fit()).isEqualTo(Fit.FITS);
    }

    @Test
    void a_fingerprint_that_cannot_be_read_fits_nothing() {
        JobRecord record =
                JobRecord.EMPTY.signing(new JobRecord.SignOff(Sign.PLANNED, "A. Berg", "2024-05-02", "3f2a"));

        assertThat(SignOffs.of(record, of(BLOCK)).of(Sign.PLANNED).words())
                .isEqualTo("Planned: A. Berg, 2024-05-02; since then changed.");
    }

    @Test
    void a_signature_wants_a_name() {
        assertThatThrownBy(() -> SignOffs.sign(Sign.PLANNED, " ", "2024-05-02", of(BLOCK)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("name");
    }
}

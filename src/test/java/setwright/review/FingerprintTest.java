package setwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.caution.Bench;
import setwright.caution.SmallJobs;
import setwright.caution.SmallShop;
import setwright.job.Job;
import setwright.job.JobRecord;
import setwright.job.OperationField;
import setwright.job.ViseField;
import setwright.job.ViseHolding.GripAsked;
import setwright.shop.Shop;
import setwright.shop.Vise;

class FingerprintTest {
    private static final Bench BLOCK = Bench.of(SmallJobs.bearingBlock());

    /** Any canonical text serves here: it has to change when the plan part changes, and not with the record. */
    private static Fingerprint of(Bench bench) {
        return Fingerprint.of(bench.plan(), bench.job().plan().toString());
    }

    @Test
    void the_same_plan_has_the_same_fingerprint() {
        assertThat(of(BLOCK)).isEqualTo(of(Bench.of(SmallJobs.bearingBlock())));
    }

    @Test
    void what_is_written_to_the_record_never_changes_it() {
        Bench written = BLOCK.with(FingerprintTest::remarked);

        assertThat(written.job()).isNotEqualTo(BLOCK.job());
        assertThat(of(written)).isEqualTo(of(BLOCK));
    }

    private static Job remarked(Job job) {
        JobRecord record = job.record()
                .remarking(new JobRecord.Remark("r1", "s1", "", "jaw wants wiping", "A. Berg", "2024-05-02"))
                .signing(new JobRecord.SignOff(JobRecord.Sign.PLANNED, "A. Berg", "2024-05-02", "old"))
                .accepting(new JobRecord.Acceptance(
                        "a/b/c/d", JobRecord.Role.LEAD, "M. Keller", "why", "2024-05-02", "1"));
        return job.withRecord(record);
    }

    @Test
    void ink_on_a_field_changes_it_even_where_the_value_stays() {
        Bench inked = BLOCK.ink(ViseField.GRIP, GripAsked.FIRM);

        assertThat(of(inked).fits(of(BLOCK))).isFalse();
        assertThat(of(inked).changedSince(of(BLOCK))).containsExactly(Fingerprint.Part.JOB, Fingerprint.Part.DRAWN_UP);
    }

    @Test
    void other_figures_are_told_from_another_job() {
        Shop stronger = SmallShop.shop().with(List.of(SmallShop.viseWithFirm("17 kN")));
        Bench other = BLOCK.in(stronger);

        assertThat(of(other).changedSince(of(BLOCK)))
                .containsExactly(Fingerprint.Part.DRAWN_UP, Fingerprint.Part.FIGURES);
    }

    @Test
    void counting_the_shop_voids_nothing() {
        Vise vise = SmallShop.shop().row(SmallShop.VISE, Vise.class).orElseThrow();
        Shop counted = SmallShop.shop().with(List.of(SmallShop.owned(vise, 3)));

        assertThat(of(BLOCK.in(counted))).isEqualTo(of(BLOCK));
    }

    @Test
    void what_the_file_keeps_is_read_back() {
        Fingerprint now = of(BLOCK);

        assertThat(Fingerprint.read(now.inFile())).contains(now);
        assertThat(Fingerprint.read("signed")).isEmpty();
        assertThat(Fingerprint.read(now.whole())).isEmpty();
    }

    @Test
    void pages_carry_its_first_sixteen_digits_in_fours() {
        Fingerprint now = of(BLOCK);

        assertThat(now.whole()).matches("[0-9a-f]{64}");
        assertThat(now.onPage()).matches("([0-9a-f]{4} ){3}[0-9a-f]{4}");
        assertThat(now.whole()).startsWith(now.onPage().replace(" ", ""));
    }

    @Test
    void the_part_over_the_job_is_the_sha_256_of_its_canonical_text() throws Exception {
        byte[] sum = MessageDigest.getInstance("SHA-256").digest("{}".getBytes(StandardCharsets.UTF_8));

        assertThat(Fingerprint.of(BLOCK.plan(), "{}").job())
                .isEqualTo(HexFormat.of().formatHex(sum).substring(0, 16));
    }

    @Test
    void every_drawn_up_value_is_in_it() {
        Fingerprint before = of(BLOCK);
        Bench slower = BLOCK.ink("h2-drill", OperationField.SPEED, SmallJobs.speed("660 rev/min"));

        assertThat(Fingerprint.of(slower.plan(), "{}").drawnUp()).isNotEqualTo(before.drawnUp());
        assertThat(Fingerprint.of(slower.plan(), "{}").figures()).isNotEqualTo(before.figures());
    }
}

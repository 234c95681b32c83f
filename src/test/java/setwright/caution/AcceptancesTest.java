package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import setwright.job.Job;
import setwright.job.JobRecord.Role;
import setwright.job.OperationField;
import setwright.job.ViseField;

class AcceptancesTest {
    private static final String SLUG = "drill-meets-parallel";
    private static final String AT = "2024-05-02";

    private static Bench accepted(Bench bench, String slug, Role role) {
        Caution caution = bench.found(slug).get(0);
        return bench.with(job -> accept(job, caution, role));
    }

    private static Job accept(Job job, Caution caution, Role role) {
        return job.withRecord(
                job.record().accepting(Acceptances.of(caution, role, "M. Keller", "sacrificial set", AT)));
    }

    private static boolean open(Bench bench, String slug) {
        return bench.findings().judged().stream()
                .filter(one -> one.caution().slug().equals(slug))
                .anyMatch(Findings.Judged::open);
    }

    @Test
    void an_accepted_caution_is_still_there_but_not_open() {
        Bench bench = accepted(Cases.thickParallels(0.3), SLUG, Role.MACHINIST);

        assertThat(bench.found(SLUG)).hasSize(1);
        assertThat(open(bench, SLUG)).isFalse();
        assertThat(bench.findings().accepted(Severity.CAUTION)).hasSize(1);
        assertThat(bench.findings().open(Severity.CAUTION)).isEmpty();
    }

    @Test
    void a_stop_is_accepted_by_the_lead_only() {
        assertThat(open(accepted(Cases.thickParallels(2), SLUG, Role.MACHINIST), SLUG))
                .isTrue();
        assertThat(open(accepted(Cases.thickParallels(2), SLUG, Role.APPRENTICE), SLUG))
                .isTrue();
        assertThat(open(accepted(Cases.thickParallels(2), SLUG, Role.LEAD), SLUG))
                .isFalse();
    }

    @Test
    void what_the_lead_accepted_is_not_undone_by_a_later_line_that_does_not_count() {
        Bench lead = accepted(Cases.thickParallels(2), SLUG, Role.LEAD);

        assertThat(open(accepted(lead, SLUG, Role.APPRENTICE), SLUG)).isFalse();
    }

    @Test
    void it_survives_a_recalculation_that_changes_other_figures() {
        Bench bench = accepted(Cases.thickParallels(2), SLUG, Role.LEAD)
                .ink("h2-drill", OperationField.SPEED, SmallShop.READING.spindleSpeed("660 rev/min"));

        assertThat(open(bench, SLUG)).isFalse();
    }

    @Test
    void it_survives_a_figure_that_gets_better_or_hardly_worse() {
        Bench bench = accepted(Cases.thickParallels(2), SLUG, Role.LEAD);

        assertThat(open(bench.mm(ViseField.PARALLEL_INSET, 1.5), SLUG)).isFalse();
        assertThat(open(bench.mm(ViseField.PARALLEL_INSET, 2.1), SLUG)).isFalse();
    }

    @Test
    void it_lapses_when_the_figure_gets_clearly_worse() {
        Bench bench = accepted(Cases.thickParallels(2), SLUG, Role.LEAD);

        assertThat(open(bench.mm(ViseField.PARALLEL_INSET, 2.3), SLUG)).isTrue();
    }

    @Test
    void a_gap_that_was_accepted_is_not_a_touch_that_was_accepted() {
        Bench gap = accepted(Cases.thickParallels(0.64), SLUG, Role.LEAD);

        assertThat(open(gap, SLUG)).isFalse();
        assertThat(open(gap.mm(ViseField.PARALLEL_INSET, 0.66), SLUG)).isTrue();
    }

    @Test
    void a_rule_without_a_figure_stays_accepted_for_the_same_pairing_only() {
        String wrong = "wrong-holder";
        Bench plain =
                accepted(Cases.facing(SmallCutters.PLAIN_END_MILL, SmallHolders.END_MILL_HOLDER), wrong, Role.LEAD);

        assertThat(open(plain.ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS), wrong))
                .isFalse();
        assertThat(open(plain.ink("f1-face", OperationField.HOLDER, SmallHolders.KEYED), wrong))
                .isTrue();
    }

    @Test
    void accepting_wants_a_reason() {
        Caution caution = Cases.thickParallels(2).found(SLUG).get(0);

        assertThatThrownBy(() -> Acceptances.of(caution, Role.LEAD, "M. Keller", " ", AT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("reason");
    }
}

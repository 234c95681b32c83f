package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.job.OperationField;
import setwright.job.ViseField;
import setwright.plan.Plan;

class RemediesTest {
    private static final List<Cases.Case> CASES =
            Cases.all().stream().filter(Cases.Case::hasRemedies).toList();

    /** Where only another drawing or another way of working helps: a plate thinner than any packing is lower. */
    private static final List<String> NO_WAY_OUT = List.of("cutter-meets-packing");

    static List<Cases.Case> cases() {
        return CASES;
    }

    private static Caution worst(Cases.Case one) {
        return one.fires().found(one.slug()).get(0);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void every_check_offers_something_here_and_never_more_than_three(Cases.Case one) {
        List<Remedy> offered = one.fires().remedies(worst(one));

        assertThat(offered).hasSizeLessThanOrEqualTo(Remedies.OFFERED);
        assertThat(offered.isEmpty()).isEqualTo(NO_WAY_OUT.contains(one.slug()));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void what_is_offered_clears_the_caution_when_it_is_taken(Cases.Case one) {
        Caution caution = worst(one);

        for (Remedy remedy : one.fires().remedies(caution)) {
            Bench taken = one.fires().with(job -> remedy.changed());
            assertThat(remedy.clears()).isTrue();
            assertThat(taken.found(one.slug())).as(remedy.text()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void what_it_brings_is_what_is_found_after_it(Cases.Case one) {
        Findings before = one.fires().findings();

        for (Remedy remedy : one.fires().remedies(worst(one))) {
            Findings after = one.fires().with(job -> remedy.changed()).findings();
            assertThat(remedy.adds())
                    .allSatisfy(added -> assertThat(after.cautions()).contains(added));
            assertThat(remedy.takesAway())
                    .allSatisfy(gone -> assertThat(before.cautions()).contains(gone));
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void those_that_bring_harm_come_last(Cases.Case one) {
        assertThat(one.fires().remedies(worst(one))).extracting(Remedy::harm).isSorted();
    }

    /** 2/3 and 1/3 of the depth are proposed; at 1500 mm/min two thirds do not hold and are not offered. */
    @Test
    void a_change_that_does_not_clear_is_not_offered() {
        Bench bench = Cases.snugFacing(1500);
        Caution caution = bench.found("slides-in-grip").get(0);

        assertThat(bench.mm("f1-face", OperationField.DEPTH, 2).found("slides-in-grip"))
                .isNotEmpty();
        assertThat(bench.remedies(caution))
                .extracting(Remedy::text)
                .noneMatch(text -> text.startsWith("Take 2 mm a pass"))
                .anyMatch(text -> text.startsWith("Take 1 mm a pass"));
    }

    /** Parallels higher than the jaw take the hole out of the way, and the part out of the grip: nothing holds it to be judged. */
    @Test
    void going_blind_is_no_remedy() {
        Bench bench = Cases.thickParallels(2).in(SmallShop.withOnlyHighThinParallels());
        Bench high = bench.ink(ViseField.PARALLELS, SmallShop.THIN_PARALLELS).mm(ViseField.PARALLEL_HEIGHT, 44.45);

        assertThat(high.found("drill-meets-parallel")).isEmpty();
        assertThat(high.findings().notChecked()).extracting(one -> one.check()).contains("slides-in-grip");
        assertThat(bench.remedies(bench.found("drill-meets-parallel").get(0)))
                .extracting(Remedy::text)
                .isNotEmpty()
                .noneMatch(text -> text.contains("1-3/4 in"));
    }

    @Test
    void a_remedy_names_the_ink_that_it_rubs_out() {
        Bench bench = Cases.stubDrillOut(34);

        assertThat(bench.remedies(bench.found("holder-meets-jaw").get(0)))
                .extracting(Remedy::text)
                .allMatch(text -> text.contains("inked)"));
    }

    @Test
    void a_remedy_inks_what_it_changes_and_leaves_the_record_alone() {
        Bench bench = Cases.thickParallels(2);
        Remedy remedy =
                bench.remedies(bench.found("drill-meets-parallel").get(0)).get(0);

        assertThat(remedy.changed().record()).isEqualTo(bench.job().record());
        assertThat(remedy.changed().plan().setUps())
                .isNotEqualTo(bench.job().plan().setUps());
        assertThat(remedy.changed().plan().withSetUps(List.of()))
                .isEqualTo(bench.job().plan().withSetUps(List.of()));
    }

    @Test
    void what_is_offered_are_different_ways_before_more_of_one() {
        Bench bench = Cases.stubDrillOut(34);

        assertThat(bench.remedies(bench.found("holder-meets-jaw").get(0)))
                .extracting(remedy -> remedy.text().split(" ")[0])
                .startsWith("Set", "Hold");
    }

    @Test
    void the_next_edit_drops_the_trying() {
        Bench bench = Cases.thickParallels(2);
        Plan plan = bench.plan();
        AtomicInteger asked = new AtomicInteger();

        List<Remedy> tried = Remedies.tried(
                plan,
                Judge.judge(plan),
                bench.found("drill-meets-parallel").get(0),
                bench.shop(),
                () -> asked.incrementAndGet() > 1);

        assertThat(tried).isEmpty();
        assertThat(asked).hasValue(2);
    }
}

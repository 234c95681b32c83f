package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.Shop;

class ChecksTest {
    private static final List<Cases.Case> CASES = Cases.all();
    private static final List<Plan> PLANS = benches().map(Bench::plan).toList();

    static List<Cases.Case> cases() {
        return CASES;
    }

    static List<Plan> everyPlan() {
        return PLANS;
    }

    private static Stream<Bench> benches() {
        return Stream.concat(
                CASES.stream().flatMap(one -> Stream.of(one.fires(), one.nearly())),
                SmallJobs.everyday().stream().map(Bench::of));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_check_fires_on_the_job_that_is_changed_to_fire_it(Cases.Case one) {
        assertThat(one.said(one.fires())).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_check_is_silent_on_the_job_that_nearly_fires_it(Cases.Case one) {
        assertThat(one.said(one.nearly())).isEmpty();
    }

    @Test
    void every_check_has_a_job_that_fires_it_and_every_job_a_check() {
        assertThat(CASES.stream().map(Cases.Case::slug)).containsExactlyInAnyOrderElementsOf(Checks.slugs());
    }

    @Test
    void no_two_checks_have_one_slug() {
        assertThat(Checks.slugs()).doesNotHaveDuplicates().allMatch(slug -> slug.matches("[a-z]+(-[a-z]+)*"));
    }

    @ParameterizedTest
    @MethodSource("everyPlan")
    void the_same_plan_gives_the_same_findings(Plan plan) {
        Plan again = Planner.plan(plan.job(), plan.rows().today());

        assertThat(Judge.judge(again)).isEqualTo(Judge.judge(plan));
    }

    @ParameterizedTest
    @MethodSource("everyPlan")
    void no_two_cautions_of_a_plan_have_one_identity(Plan plan) {
        assertThat(Judge.judge(plan).cautions()).extracting(Caution::identity).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("everyPlan")
    void the_worst_stands_first(Plan plan) {
        assertThat(Judge.judge(plan).cautions()).extracting(Caution::severity).isSorted();
    }

    @ParameterizedTest
    @MethodSource("everyPlan")
    void a_caution_stands_on_the_wrong_side_of_its_limit_and_a_note_on_the_right(Plan plan) {
        for (Caution caution : Judge.judge(plan).cautions()) {
            Figure figure = caution.figure();
            if (figure != null) {
                boolean wrongSide =
                        figure.worseUp() ? figure.value() > figure.limit() : figure.value() < figure.limit();
                assertThat(wrongSide).as(caution.message()).isEqualTo(caution.severity() != Severity.NOTE);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "holder-meets-jaw",
                "holder-meets-work",
                "no-room-to-change-tool",
                "quill-runs-out",
                "wrong-holder"
            })
    void a_check_that_is_meant_for_every_operation_looks_at_each(String slug) {
        assertThat(check(slug).look(Cases.block().plan())).hasSize(6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"drill-meets-parallel", "slides-in-grip", "lifts-in-grip", "tips-in-grip", "tool-springs"})
    void a_check_that_is_meant_for_the_set_up_or_its_one_face_looks_once(String slug) {
        assertThat(check(slug).look(Cases.block().plan())).hasSize(1);
    }

    private static Check check(String slug) {
        return Checks.ALL.stream()
                .filter(one -> one.slug().equals(slug))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void every_look_that_came_to_an_answer_is_counted() {
        Plan plan = Cases.block().plan();
        Findings findings = Judge.judge(plan);

        assertThat(findings.looked())
                .isEqualTo(Checks.ALL.stream()
                        .mapToInt(check -> check.look(plan).size())
                        .sum());
        assertThat(findings.notChecked()).isEmpty();
    }

    @Test
    void an_operation_without_a_cutter_is_neither_a_pass_nor_a_block() {
        Findings findings = withoutCutters().findings();

        assertThat(findings.judged()).isEmpty();
        assertThat(findings.margins())
                .extracting(margin -> margin.place().operation())
                .allMatch(String::isEmpty);
        assertThat(findings.notChecked())
                .extracting(one -> one.check())
                .contains(
                        "drill-meets-parallel",
                        "holder-meets-jaw",
                        "wrong-holder",
                        "no-room-to-change-tool",
                        "quill-runs-out",
                        "slides-in-grip",
                        "lifts-in-grip",
                        "tips-in-grip",
                        "tool-springs");
    }

    @Test
    void what_could_not_be_looked_at_is_said_once_for_each_check_and_place() {
        assertThat(withoutCutters().findings().notChecked())
                .extracting(one -> one.check() + "/" + one.setUp() + "/" + one.operation())
                .doesNotHaveDuplicates();
    }

    @Test
    void what_is_missing_is_counted_by_what_would_be_needed() {
        Findings findings = withoutCutters().findings();

        assertThat(findings.missing().values().stream()
                        .mapToInt(Integer::intValue)
                        .sum())
                .isEqualTo(findings.notChecked().size());
        assertThat(findings.missing()).hasSizeLessThan(findings.notChecked().size());
    }

    private static Bench withoutCutters() {
        Shop shop = Shop.of(SmallShop.shop().rows().stream()
                .filter(row -> !(row instanceof setwright.shop.Cutter))
                .toList());
        return Cases.block().in(shop);
    }
}

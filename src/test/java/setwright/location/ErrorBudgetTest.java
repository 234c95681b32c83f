package setwright.location;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.location.ErrorBudget.Compared;
import setwright.location.ErrorBudget.Verdict;
import setwright.quantity.Source;

class ErrorBudgetTest {
    private static final double INCH = 25.4;
    private static final double NOTHING = 1e-12;
    private static final Source HERE = Source.of("computed: by hand");

    /** W32 against the hole location of a first-level skill standard, ± 0.005 in. */
    @Test
    void a_hole_by_dial_with_backlash_taken_up_holds() {
        var judged =
                ErrorBudget.alongAnAxis(HoleErrors.byDial().contributors(INCH)).against(0.005 * INCH);

        assertThat(judged.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(judged.compared()).isEqualTo(Compared.ALONG_AN_AXIS);
    }

    /** W33: the root sum square passes at 0.0044 in, but backlash dominates, so that the worst case counts. */
    @Test
    void backlash_that_is_not_taken_up_counts_as_worst_case() {
        var budget = ErrorBudget.alongAnAxis(
                HoleErrors.byDial().withBacklash(0.004 * INCH).contributors(INCH));

        assertThat(budget.rootSumSquare()).isLessThan(0.005 * INCH);
        assertThat(budget.dominant(0.005 * INCH).orElseThrow().name()).isEqualTo("backlash");
        assertThat(budget.decisive(0.005 * INCH)).isEqualTo(budget.worstCase());
        assertThat(budget.against(0.005 * INCH).verdict()).isEqualTo(Verdict.OFF);
    }

    @Test
    void what_holds_but_for_the_worst_case_is_told_apart() {
        var budget = ErrorBudget.alongAnAxis(List.of(axis("a", 3), axis("b", 4), axis("c", 3)));

        assertThat(budget.against(9).verdict()).isEqualTo(Verdict.ALL_BUT_WORST_CASE);
        assertThat(budget.against(10).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(budget.against(5).verdict()).isEqualTo(Verdict.OFF);
        assertThat(budget.against(9).margin()).isCloseTo(9 - Math.sqrt(34), within(NOTHING));
        assertThat(budget.largest().orElseThrow().name()).isEqualTo("b");
    }

    /** 3 and 4 make 5; the bias of 2 adds to the root as it does to the sum. */
    @Test
    void a_known_bias_always_adds() {
        var budget = ErrorBudget.alongAnAxis(List.of(axis("a", 3), Contributor.bias("shim", 2, HERE), axis("b", 4)));

        assertThat(budget.rootSumSquare()).isCloseTo(7, within(NOTHING));
        assertThat(budget.worstCase()).isEqualTo(9);
        assertThat(budget.bias()).isEqualTo(2);
    }

    /** Position 0.1 (ISO 1101) is the diameter of the zone; 0.03 in X and in Y is 0.03 √2 from the true place. */
    @Test
    void a_position_is_compared_as_the_distance_from_the_true_place() {
        var budget =
                ErrorBudget.fromTruePlace(List.of(axis("edge", 0.03), Contributor.oneDirection("drift", 0.02, HERE)));

        assertThat(ErrorBudget.radialLimit(0.1)).isEqualTo(0.05);
        assertThat(budget.worstCase()).isCloseTo(0.03 * Math.sqrt(2) + 0.02, within(NOTHING));
        assertThat(budget.rootSumSquare()).isCloseTo(Math.sqrt(2 * 0.0009 + 0.0004), within(NOTHING));
        assertThat(budget.against(0.05).compared()).isEqualTo(Compared.FROM_TRUE_PLACE);
    }

    @Test
    void contributors_of_nought_are_left_out() {
        assertThat(HoleErrors.byReadout().contributors(38))
                .extracting(Contributor::name)
                .doesNotContain("backlash")
                .contains("dial or readout", "drift of the drill");
        assertThatThrownBy(() -> axis("edge", -0.01)).hasMessageContaining("nought or more");
    }

    @Test
    void the_root_sum_square_lies_between_the_largest_and_the_worst_case() {
        Rounds.each(41, (random, round) -> {
            List<Contributor> contributors = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(12); i++) {
                contributors.add(axis("c" + i, random.nextDouble(0, 0.1)));
            }
            var budget = ErrorBudget.alongAnAxis(contributors);
            double largest = budget.largest().orElseThrow().amount();

            assertThat(budget.rootSumSquare()).isBetween(largest - NOTHING, budget.worstCase() + NOTHING);
            assertThat(budget.decisive(random.nextDouble(0, 0.5)))
                    .isBetween(largest - NOTHING, budget.worstCase() + NOTHING);
            assertThat(ErrorBudget.fromTruePlace(contributors).worstCase())
                    .isCloseTo(Math.hypot(budget.worstCase(), budget.worstCase()), within(1e-9));
        });
    }

    /** Neither sum, nor the one that counts, nor the verdict. */
    @Test
    void a_budget_never_improves_when_a_contributor_grows() {
        Rounds.each(43, (random, round) -> {
            List<Contributor> before = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(8); i++) {
                double amount = random.nextDouble(0, 0.1);
                before.add(
                        random.nextInt(4) == 0
                                ? Contributor.bias("b" + i, amount, HERE)
                                : random.nextBoolean()
                                        ? axis("c" + i, amount)
                                        : Contributor.oneDirection("d" + i, amount, HERE));
            }
            List<Contributor> after = new ArrayList<>(before);
            int grown = random.nextInt(before.size());
            after.set(grown, before.get(grown).of(before.get(grown).amount() * random.nextDouble(1, 6)));
            double limit = random.nextDouble(0.01, 0.4);

            assertGrown(ErrorBudget.alongAnAxis(before), ErrorBudget.alongAnAxis(after), limit);
            assertGrown(ErrorBudget.fromTruePlace(before), ErrorBudget.fromTruePlace(after), limit);
        });
    }

    private static void assertGrown(ErrorBudget before, ErrorBudget after, double limit) {
        assertThat(after.rootSumSquare()).isGreaterThanOrEqualTo(before.rootSumSquare() - NOTHING);
        assertThat(after.worstCase()).isGreaterThanOrEqualTo(before.worstCase() - NOTHING);
        assertThat(after.decisive(limit)).isGreaterThanOrEqualTo(before.decisive(limit) - NOTHING);
        assertThat(after.against(limit).verdict())
                .isGreaterThanOrEqualTo(before.against(limit).verdict());
    }

    /** 0.03 of 0.04 is more than 60 %; of 0.06 it is half, and 0.03 with 0.04 makes 0.05. */
    @Test
    void what_takes_most_of_the_tolerance_alone_counts_as_worst_case() {
        var budget = ErrorBudget.alongAnAxis(List.of(axis("a", 0.03), axis("b", 0.004)));

        assertThat(budget.decisive(0.04)).isCloseTo(0.034, within(NOTHING));
        assertThat(budget.decisive(0.06)).isCloseTo(Math.sqrt(0.000916), within(NOTHING));
        assertThat(budget.withLargestHalved(0.06)).isCloseTo(Math.sqrt(0.000241), within(NOTHING));
    }

    private static Contributor axis(String name, double halfWidth) {
        return Contributor.eachAxis(name, halfWidth, HERE);
    }
}

package setwright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.caution.Bench;
import setwright.caution.Caution;
import setwright.caution.Figure;
import setwright.caution.HouseWords;
import setwright.caution.Margin;
import setwright.caution.SmallJobs;
import setwright.caution.SmallShop;
import setwright.job.ViseField;
import setwright.plan.Plan;
import setwright.quantity.Band;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;

class MarginsTest {
    private static final Bench BLOCK = Bench.of(SmallJobs.bearingBlock());
    private static final Printing METRIC = new Printing(UnitSystem.METRIC);

    private static List<Margin> all(Bench bench) {
        return Margins.all(bench.plan(), bench.findings());
    }

    @Test
    void the_thinnest_stand_first_and_as_many_as_are_asked() {
        Plan plan = BLOCK.plan();

        assertThat(all(BLOCK)).extracting(margin -> margin.figure().left()).isSorted();
        assertThat(Margins.thinnest(plan, BLOCK.findings(), 5))
                .isEqualTo(all(BLOCK).subList(0, 5));
    }

    @Test
    void a_margin_is_there_whether_a_caution_fires_or_not() {
        assertThat(all(BLOCK))
                .extracting(Margin::of)
                .contains("drill-meets-parallel", "quill-runs-out", "slides-in-grip", "spindle-power", "clearance");
    }

    @Test
    void what_is_beyond_its_limit_comes_before_what_only_nears_it() {
        Bench thick = BLOCK.ink(ViseField.PARALLELS, SmallShop.THICK_PARALLELS)
                .ink(ViseField.PARALLEL_INSET, SmallJobs.mm("2 mm"));

        Margin first = all(thick).get(0);
        assertThat(first.of()).isEqualTo("drill-meets-parallel");
        assertThat(first.figure().left()).isNegative();
    }

    /** Half of what is asked, all of it, twice it; and the same of a limit. */
    @Test
    void what_is_left_is_measured_alike_for_what_is_asked_and_what_is_allowed() {
        assertThat(Figure.atLeast(3, 1.5, Unit.MM).left()).isEqualTo(-0.5);
        assertThat(Figure.atLeast(3, 3, Unit.MM).left()).isZero();
        assertThat(Figure.atLeast(3, 6, Unit.MM).left()).isEqualTo(0.5);
        assertThat(Figure.atMost(127, 127, Unit.MM).left()).isZero();
        assertThat(Figure.atMost(127, 63.5, Unit.MM).left()).isEqualTo(0.5);
        assertThat(Figure.atMost(100, 150, Unit.MM).left()).isEqualTo(-0.5);
    }

    @Test
    void the_grip_is_printed_with_both_ends_of_its_band() {
        Margin grip = all(BLOCK).stream()
                .filter(margin -> margin.of().equals("slides-in-grip"))
                .findFirst()
                .orElseThrow();

        assertThat(Margins.words(grip, METRIC))
                .matches(
                        "Grip against Face mill 63 mm, 5 inserts: \\d+(\\.\\d)?, asked [12] \\(.* to .*\\) \\(s1/f1-face\\)");
    }

    /** Hand calculation from the contributors as printed: root of the sum of squares of its contributors. */
    @Test
    void the_error_budget_stands_against_half_the_position_zone() {
        Margin place = all(BLOCK).stream()
                .filter(margin -> margin.of().equals("off-tolerance"))
                .filter(margin -> margin.place().subject().equals("h1"))
                .findFirst()
                .orElseThrow();
        double squares = BLOCK.plan().place().budgets().stream()
                .filter(budget -> budget.subject().equals("h1"))
                .flatMap(budget -> budget.contributions().stream())
                .mapToDouble(one -> one.halfWidth() * one.halfWidth())
                .sum();

        assertThat(place.figure().limit()).isCloseTo(0.1, within(1e-12));
        assertThat(place.figure().value()).isCloseTo(Math.sqrt(squares), within(1e-9));
        assertThat(place.place().subject()).isEqualTo("h1");
    }

    @Test
    void a_margin_in_words_says_what_how_much_of_what_and_where() {
        Caution.Place place = Caution.Place.of("s1", "o3", "jaw", "solid jaw");
        Margin gap = Margin.of("x", place, "Chuck to the solid jaw", Figure.atLeast(3, 3.5, Unit.MM));
        Margin used = Margin.of("x", place, "Spindle power with Drill", Figure.atMost(1, 0.87, Unit.NONE))
                .between(new Band(0.8, 0.87, 1.1));

        assertThat(Margins.words(gap, METRIC)).isEqualTo("Chuck to the solid jaw: 3.5 mm, asked 3 mm (s1/o3)");
        assertThat(Margins.words(used, METRIC)).isEqualTo("Spindle power with Drill: 87 % used (0.8 to 1.1) (s1/o3)");
        assertThat(Margins.words(gap, new Printing(UnitSystem.INCH))).contains("0.138 in, asked 0.118 in");
    }

    @Test
    void margins_are_written_in_the_words_of_the_house() {
        assertThat(all(BLOCK))
                .extracting(margin -> Margins.words(margin, METRIC))
                .allSatisfy(words -> assertThat(HouseWords.against(words)).isEmpty())
                .allSatisfy(words -> assertThat(words).matches("[A-Z].*").doesNotContain("NaN", "null"));
    }
}

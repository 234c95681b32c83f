package setwright.location.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.Rounds;
import setwright.location.Contributor;
import setwright.location.ErrorBudget;
import setwright.location.angle.HeadTilt;
import setwright.quantity.CsvRows;
import setwright.quantity.fit.ToleranceGrade;

class BudgetChecksTest {
    private static final double INCH = 25.4;

    static List<CsvRows.Row> checks() {
        return CsvRows.beside(BudgetChecksTest.class, "budget-checks.csv");
    }

    static List<CsvRows.Row> grades() {
        return CsvRows.beside(BudgetChecksTest.class, "process-grades.csv");
    }

    @ParameterizedTest
    @MethodSource("checks")
    void worked_examples_come_out_as_their_sources_print_them(CsvRows.Row check) {
        double[] v = Arrays.stream(check.text("inputs").split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        double found = switch (check.text("what")) {
            case "drilled most over" -> (drilled(v[0]).aim() + half(drilled(v[0]))) / INCH;
            case "drilled most under" -> (half(drilled(v[0])) - drilled(v[0]).aim()) / INCH;
            case "dish" -> HeadTilt.dish(v[0], v[1], v[2]);
            case "lean" -> Seating.skew(v[0], v[1]);
            case "grade asked" -> ProcessGrade.asked(v[0], v[1]).orElseThrow();
            default -> throw new IllegalArgumentException(check.text("what"));
        };

        assertThat(found).isCloseTo(check.number("result"), within(check.number("tolerance")));
    }

    private static Made drilled(double inches) {
        return ToolSize.drilled(inches * INCH);
    }

    private static double half(Made made) {
        return made.spreads().stream().mapToDouble(Contributor::amount).sum();
    }

    @ParameterizedTest
    @MethodSource("grades")
    void the_band_of_a_process_takes_in_what_every_source_says(CsvRows.Row row) {
        ProcessGrade process = ProcessGrade.valueOf(row.text("process"));

        assertThat(process.finest()).isLessThanOrEqualTo((int) row.number("finest"));
        assertThat(process.coarsest()).isGreaterThanOrEqualTo((int) row.number("coarsest"));
    }

    @Test
    void the_band_of_a_process_is_no_wider_than_its_sources() {
        for (ProcessGrade process : ProcessGrade.values()) {
            assertThat(named(process)).anyMatch(row -> row.number("finest") == process.finest());
            assertThat(named(process)).anyMatch(row -> row.number("coarsest") == process.coarsest());
        }
    }

    private static Stream<CsvRows.Row> named(ProcessGrade process) {
        return grades().stream().filter(row -> row.text("process").equals(process.name()));
    }

    @Test
    void a_grade_finer_than_usual_is_told_from_one_that_is_reached() {
        assertThat(ProcessGrade.REAMING.seldomReaches(12, 0.018)).isFalse();
        assertThat(ProcessGrade.MILLING.seldomReaches(12, 0.018)).isTrue();
        assertThat(ProcessGrade.REAMING.seldomReaches(12, 0.001)).isTrue();
        assertThat(ProcessGrade.REAMING.opinion(12, 0.018))
                .isEqualTo("IT7 is asked; reaming usually reaches IT6 to IT10");
        assertThat(ProcessGrade.MILLING.opinion(400, 0.1)).isEqualTo("milling usually reaches IT10 to IT13");
    }

    /** In H7 from 10 to 120 mm, by any machine: half of the tolerance is 9 µm and more. */
    @Test
    void a_bored_h7_hole_is_held_by_measuring_and_not_by_the_dial() {
        Rounds.each(61, (random, round) -> {
            double half = ToleranceGrade.of(random.nextDouble(10.1, 120), 7).tolerance() / 2;
            var measured = ErrorBudget.alongAnAxis(Measured.BORE.contributors(Measured.HEAD_SETTING));
            var dial = ErrorBudget.alongAnAxis(Measured.bySightOfTheDial());

            assertThat(measured.against(half).verdict()).isNotEqualTo(ErrorBudget.Verdict.OFF);
            assertThat(dial.against(half).verdict()).isEqualTo(ErrorBudget.Verdict.OFF);
        });
    }

    @Test
    void a_datum_is_found_the_better_the_less_the_hand_has_in_it() {
        assertThat(DatumWay.BORE_INDICATED.halfWidth()).isLessThan(DatumWay.EDGE_FINDER.halfWidth());
        assertThat(DatumWay.BETWEEN_EDGES.halfWidth())
                .isCloseTo(DatumWay.EDGE_FINDER.halfWidth() / Math.sqrt(2), within(0.0001));
        assertThat(DatumWay.EDGE_FINDER.halfWidth()).isLessThan(DatumWay.SCRIBED_LINES.halfWidth());
    }

    @Test
    void a_slot_comes_wide_by_the_run_out_of_its_cutter() {
        Made made = ToolSize.slot(0, 0.01, 0.025);

        assertThat(made.aim()).isCloseTo(0.0175, within(1e-12));
        assertThat(made.spreads())
                .extracting(Contributor::amount)
                .anySatisfy(amount -> assertThat(amount).isCloseTo(0.0075, within(1e-12)));
    }

    /** 12 H7 is 18 µm: the reamer from 15 % to 50 % of it below the upper limit, 9.0 to 15.3 µm over nominal. */
    @Test
    void a_reamer_is_made_within_the_hole_that_it_reams() {
        Made made = ToolSize.reamed(0.018, 0.018, 0);

        assertThat(made.aim() - half(made)).isCloseTo(0.009, within(1e-9));
        assertThat(made.aim() + half(made)).isCloseTo(0.0153, within(1e-9));
    }
}

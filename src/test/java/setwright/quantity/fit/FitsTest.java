package setwright.quantity.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.quantity.CsvRows;
import setwright.quantity.Unit;
import setwright.quantity.Unreadable;

class FitsTest {
    private static final double NOTHING = 1e-12;
    private final Fits fits = Fits.listed();

    static List<CsvRows.Row> cells() {
        return CsvRows.beside(FitsTest.class, "fit-checks.csv");
    }

    static List<CsvRows.Row> grades() {
        return CsvRows.beside(FitsTest.class, "grade-checks.csv");
    }

    @ParameterizedTest
    @MethodSource("cells")
    void cells_agree_with_the_pages_they_were_read_on(CsvRows.Row cell) {
        var limits = fits.limits(cell.number("size"), cell.text("class"));

        assertThat(Unit.UM.fromInside(limits.upper())).isCloseTo(cell.number("upper_um"), within(1e-9));
        assertThat(Unit.UM.fromInside(limits.lower())).isCloseTo(cell.number("lower_um"), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("grades")
    void grades_agree_with_the_printed_ones(CsvRows.Row check) {
        var grade = ToleranceGrade.of(check.number("diameter"), check.text("grade"));

        assertThat(grade.tolerance()).isCloseTo(check.number("tolerance_mm"), within(NOTHING));
    }

    /** W30: the geometric mean of 30 to 50 mm is 38.73; i = 1.561 µm (from memory: ISO 286-1). */
    @Test
    void the_tolerance_unit_follows_its_formula() {
        assertThat(Unit.UM.fromInside(ToleranceGrade.toleranceUnit(38.73))).isCloseTo(1.561, within(0.0005));
    }

    /** IT6 is 10 tolerance units and so on; the printed grades are that, rounded by up to 1 µm or 6 %. */
    @Test
    void printed_grades_are_near_the_formula() {
        int[] units = {10, 16, 25, 40, 64, 100, 160, 250, 400};
        double[] bands = {3, 6, 10, 18, 30, 50, 80, 120, 180, 250};
        for (int band = 1; band < bands.length; band++) {
            double mean = Math.sqrt(bands[band - 1] * bands[band]);
            for (int grade = 6; grade <= 14; grade++) {
                double formula = units[grade - 6] * ToleranceGrade.toleranceUnit(mean);
                assertThat(ToleranceGrade.of(mean, grade).tolerance())
                        .as("IT%d at %.1f mm", grade, mean)
                        .isCloseTo(formula, within(Math.max(0.001, 0.06 * formula)));
            }
        }
    }

    @Test
    void every_class_is_as_wide_as_its_grade() {
        for (String toleranceClass : fits.classes()) {
            int grade = Integer.parseInt(toleranceClass.replaceAll("[A-Za-z]", ""));
            for (double size : new double[] {1, 3, 3.1, 6, 10, 12, 25, 40, 63, 100, 180}) {
                assertThat(fits.limits(size, toleranceClass).tolerance())
                        .as(size + " " + toleranceClass)
                        .isCloseTo(ToleranceGrade.of(size, grade).tolerance(), within(NOTHING));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"12 H7", "12H7", "Ø12 H7", " 12 mm H7 "})
    void a_drawing_note_is_read(String note) {
        var limits = fits.read(note);

        assertThat(limits.nominal()).isEqualTo(12);
        assertThat(limits.least()).isEqualTo(12);
        assertThat(limits.greatest()).isCloseTo(12.018, within(NOTHING));
        assertThat(limits.isHole()).isTrue();
        assertThat(limits.written()).isEqualTo("12 H7");
        assertThat(Fits.looksLikeSize(note)).isTrue();
    }

    /** 12 H7/g6 from the cells above: 0 to 18 over -17 to -6. */
    @Test
    void a_pair_gives_its_clearances() {
        var fit = fits.pair(12, "H7/g6");

        assertThat(fit.largestClearance()).isCloseTo(0.035, within(NOTHING));
        assertThat(fit.smallestClearance()).isCloseTo(0.006, within(NOTHING));
    }

    @Test
    void what_is_not_listed_is_said() {
        assertThatThrownBy(() -> fits.limits(12, "Z3"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("'Z3' is not among")
                .hasMessageContaining("H7");
        assertThatThrownBy(() -> fits.limits(400, "H7")).hasMessage("H7 is listed from 1 to 180 mm, not for 400 mm.");
        assertThatThrownBy(() -> fits.pair(12, "H7")).hasMessageContaining("written hole over shaft");
        assertThatThrownBy(() -> fits.pair(12, "g6/H7")).hasMessageContaining("capital");
        assertThatThrownBy(() -> fits.read("M8")).isInstanceOf(Unreadable.class);
        assertThatThrownBy(() -> ToleranceGrade.of(12, "IT3")).hasMessageContaining("IT5 to IT14");
        assertThatThrownBy(() -> ToleranceGrade.of(0.5, 7)).hasMessageContaining("from 1 to 250 mm, not for 0.5 mm");
        assertThatThrownBy(() -> ToleranceGrade.of(12, "7")).hasMessageContaining("written as IT7");
    }
}

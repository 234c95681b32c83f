package setwright.quantity.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.quantity.CsvRows;
import setwright.quantity.Unit;

/** Every class in every band, beside the table of ISO 286-2 with its own remarks on what was read where. */
class FitTableTest {
    private static final double EXACT = 1e-9;

    static List<CsvRows.Row> cells() {
        return CsvRows.beside(FitTableTest.class, "fits-published.csv");
    }

    @ParameterizedTest
    @MethodSource("cells")
    void a_class_has_its_limits_from_just_over_its_band_to_the_end_of_it(CsvRows.Row cell) {
        double over = cell.number("over_mm");
        for (double size : new double[] {over == 1 ? 1 : over + 0.001, cell.number("to_mm")}) {
            Limits limits = Fits.listed().limits(size, cell.text("class"));
            assertThat(Unit.UM.fromInside(limits.upper())).isCloseTo(cell.number("upper_um"), within(EXACT));
            assertThat(Unit.UM.fromInside(limits.lower())).isCloseTo(cell.number("lower_um"), within(EXACT));
        }
    }

    /** A class is at the same distance from nought in every grade: f7 and F8 begin where the other ends. */
    @Test
    void a_hole_and_a_shaft_of_one_letter_stand_as_far_from_nought() {
        assertThat(nearEnd("F7", false)).isEqualTo(nearEnd("f7", true));
        assertThat(nearEnd("H7", false)).isEqualTo(nearEnd("h6", true)).allMatch(end -> end == 0);
    }

    private static List<Double> nearEnd(String toleranceClass, boolean shaft) {
        return cells().stream()
                .filter(cell -> cell.text("class").equals(toleranceClass))
                .map(cell -> Math.abs(cell.number(shaft ? "upper_um" : "lower_um")))
                .collect(Collectors.toList());
    }

    @Test
    void no_class_is_listed_that_the_table_does_not_have() {
        assertThat(Fits.listed().classes())
                .containsExactlyInAnyOrderElementsOf(cells().stream()
                        .map(cell -> cell.text("class"))
                        .distinct()
                        .toList());
    }
}

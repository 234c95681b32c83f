package setwright.location.budget;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import setwright.quantity.Unit;

class ReloadingTest {
    /** The whole spread of the planning figures holds twice the half-width. */
    @ParameterizedTest
    @CsvFileSource(resources = "/setwright/location/budget/repeatability.csv", numLinesToSkip = 1)
    void what_brings_parts_back_lies_within_the_planning_figures(
            Reloading reloading, double least, double most, String source) {
        double spread = Unit.IN.fromInside(2 * reloading.halfWidth());
        assertThat(spread).as(source).isBetween(least - 1e-9, most + 1e-9);
    }
}

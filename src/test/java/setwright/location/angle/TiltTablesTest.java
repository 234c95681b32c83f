package setwright.location.angle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.quantity.CsvRows;

/** Set-overs for tapers and elevations for end teeth, whole tables. */
class TiltTablesTest {
    static List<CsvRows.Row> tapers() {
        return CsvRows.beside(TiltTablesTest.class, "taper-tilt.csv");
    }

    static List<CsvRows.Row> teeth() {
        return CsvRows.beside(TiltTablesTest.class, "end-tooth-tilt.csv");
    }

    @ParameterizedTest
    @MethodSource("tapers")
    void a_taper_on_the_foot_is_set_over_by_half_its_angle(CsvRows.Row row) {
        double perUnit = Taper.perUnit(inches(row.text("taper_per_foot")), 0, 12);
        assertThat(Math.toDegrees(Taper.halfAngle(perUnit))).isCloseTo(row.number("tilt_deg"), within(6e-6));
    }

    private static double inches(String text) {
        double sum = 0;
        for (String part : text.split(" ")) {
            String[] over = part.split("/");
            sum += over.length == 2
                    ? Double.parseDouble(over[0]) / Double.parseDouble(over[1])
                    : Double.parseDouble(part);
        }
        return sum;
    }

    @ParameterizedTest
    @MethodSource("teeth")
    void the_head_is_raised_for_end_teeth_as_the_table_has_it(CsvRows.Row row) {
        double elevation = EndTeeth.elevation(row.number("teeth"), Math.toRadians(row.number("cutter_angle_deg")));
        assertThat(Math.toDegrees(elevation)).isCloseTo(row.number("head_elevation_deg"), within(6e-5));
    }
}

package setwright.quantity.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.quantity.CsvRows;
import setwright.quantity.DrillNames;
import setwright.quantity.Length;
import setwright.quantity.Unit;

/** Every row of the table of threads: as read by its designation, and by the arithmetic of its profile. */
class ThreadTableTest {
    /** The customary drills that come out of the limits of 6H or 2B: each is a hair over the greatest. */
    private static final Set<String> OVER_THE_LIMIT = Set.of("9/16-18", "5/8-18");

    static List<CsvRows.Row> rows() {
        return CsvRows.beside(ThreadTableTest.class, "threads-published.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_designation_gives_the_sizes_of_its_row(CsvRows.Row row) {
        Unit unit = unit(row);
        ScrewThread thread = Threads.listed().read(row.text("thread"));
        ThreadRow listed = Threads.listed().row(thread).orElseThrow();

        assertThat(unit.fromInside(thread.major())).isCloseTo(row.number("major"), within(1e-9));
        double pitch = row.has("tpi") ? 1 / row.number("tpi") : row.number("pitch");
        assertThat(unit.fromInside(thread.pitch())).isCloseTo(pitch, within(1e-9));
        assertThat(unit.fromInside(listed.minorLeast())).isCloseTo(row.number("minor_min"), within(1e-9));
        assertThat(unit.fromInside(listed.minorGreatest())).isCloseTo(row.number("minor_max"), within(1e-9));
        assertThat(listed.tapDrill()).isEqualTo(row.text("tap_drill"));
        assertThat(unit.fromInside(listed.tapDrillDiameter())).isCloseTo(row.number("tap_drill_d"), within(0.0000501));
    }

    /** computed: ISO 68-1 has the minor diameter 1.082532 P below the major; the trade counts thread by 1.299038 P. */
    @ParameterizedTest
    @MethodSource("rows")
    void a_row_agrees_with_the_arithmetic_of_its_profile(CsvRows.Row row) {
        Unit unit = unit(row);
        ScrewThread thread = Threads.listed().read(row.text("thread"));
        double minor = unit.fromInside(thread.minor());
        double area = thread.stressArea() / (unit == Unit.IN ? Unit.IN2.toInside(1) : 1);
        double engagement =
                TapDrill.engagement(thread.major(), thread.pitch(), unit.toInside(row.number("tap_drill_d")));

        assertThat(row.number("minor_min")).isCloseTo(minor, within(unit == Unit.IN ? 0.0006 : 0.0006));
        assertThat(area).isCloseTo(row.number("stress_area"), within(0.006 * row.number("stress_area")));
        assertThat(100 * engagement).isCloseTo(row.number("percent_thread"), within(0.15));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void a_clearance_hole_is_that_of_its_screw(CsvRows.Row row) {
        ThreadRow listed =
                Threads.listed().row(Threads.listed().read(row.text("thread"))).orElseThrow();
        if (!row.has("clear_close")) {
            assertThat(listed.clearance().medium()).isNaN();
            return;
        }
        assertThat(listed.clearance().fine()).isCloseTo(hole(row, "clear_close"), within(1e-9));
        assertThat(listed.clearance().medium()).isCloseTo(hole(row, "clear_normal"), within(1e-9));
        assertThat(listed.clearance().coarse()).isCloseTo(hole(row, "clear_loose"), within(1e-9));
        assertThat(listed.clearance().fine()).isGreaterThan(listed.thread().major());
    }

    private static double hole(CsvRows.Row row, String column) {
        String text = row.text(column);
        return row.text("unit").equals("mm")
                ? row.number(column)
                : DrillNames.published()
                        .size(text)
                        .map(Length::inside)
                        .orElseGet(() -> 25.4 * ThreadTable.fraction(text));
    }

    @Test
    void the_customary_drill_is_within_the_limits_of_the_minor_diameter_but_for_two() {
        for (ThreadRow row : Threads.listed().rows()) {
            String name = row.thread().designation();
            assertThat(row.takes(row.tapDrillDiameter())).as(name).isEqualTo(!OVER_THE_LIMIT.contains(name));
        }
    }

    private static Unit unit(CsvRows.Row row) {
        return row.text("unit").equals("mm") ? Unit.MM : Unit.IN;
    }
}

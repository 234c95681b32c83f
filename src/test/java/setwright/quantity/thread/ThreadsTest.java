package setwright.quantity.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.quantity.CsvRows;
import setwright.quantity.Unit;
import setwright.quantity.Unreadable;

class ThreadsTest {
    private final Threads threads = Threads.listed();

    static List<CsvRows.Row> checks() {
        return CsvRows.beside(ThreadsTest.class, "thread-checks.csv");
    }

    @ParameterizedTest
    @MethodSource("checks")
    void sizes_agree_with_the_lists_they_were_read_in(CsvRows.Row check) {
        var thread = threads.read(check.text("thread"));
        boolean inch = check.text("unit").equals("in");
        double found = switch (check.text("what")) {
            case "stress area" -> thread.stressArea() / (inch ? Unit.IN2.toInside(1) : 1);
            case "minor" -> thread.minor() / (inch ? 25.4 : 1);
            case "major" -> thread.major() / (inch ? 25.4 : 1);
            default -> throw new IllegalArgumentException(check.text("what"));
        };

        assertThat(found).isCloseTo(check.number("result"), within(check.number("tolerance")));
    }

    @ParameterizedTest
    @CsvSource({
        "M8, M8, 8, 1.25",
        "M8x1.25, M8, 8, 1.25",
        "M8 x 1.25 - 6H, M8, 8, 1.25",
        "M8-6H, M8, 8, 1.25",
        "M10x1, M10x1, 10, 1",
        "M7x1, M7x1, 7, 1",
        "1/4-20, 1/4-20, 6.35, 1.27",
        "1/4-20 UNC, 1/4-20, 6.35, 1.27",
        "1/4-20 UNC-2B, 1/4-20, 6.35, 1.27",
        "1-8, 1-8, 25.4, 3.175",
        "#10-32 UNF, #10-32, 4.826, 0.79375",
        "1/4-32 UNEF, 1/4-32, 6.35, 0.79375"
    })
    void a_designation_is_read(String typed, String listed, double major, double pitch) {
        var thread = threads.read(typed);

        assertThat(thread.designation()).isEqualTo(listed);
        assertThat(thread.major()).isCloseTo(major, within(1e-9));
        assertThat(thread.pitch()).isCloseTo(pitch, within(1e-9));
    }

    @Test
    void a_mixed_inch_size_is_its_whole_and_its_fraction() {
        assertThat(threads.read("1-1/8-7").major()).isCloseTo(28.575, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "M8x1,25; a comma; write the pitch with a point: M8x1.25",
                "M7; not among the coarse threads; M7x1",
                "1/4-20 UNF; 1/4-20 is UNC; the UNF thread of this size is 1/4-28",
                "1/4-24 UNC; not listed; the UNC thread of this size is 1/4-20",
                "M8x5; not a thread; half the diameter",
                "1/0-20; not a thread; 300 mm",
                "0/0-20; not a thread; 300 mm",
                "1/4-0; no threads per inch; 1/4-0"
            })
    void what_cannot_be_read_is_said_with_the_way_out(String typed, String what, String wayOut) {
        assertThatThrownBy(() -> threads.read(typed))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining(what)
                .hasMessageContaining(wayOut);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/4 XX", "M", "", "thread", "8", "M8x1.25x30"})
    void another_kind_of_text_is_told_what_is_read(String typed) {
        assertThatThrownBy(() -> threads.read(typed))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("metric (M8, M8x1.25), unified (1/4-20");
    }

    @Test
    void every_row_is_found_again_by_its_own_designation() {
        assertThat(threads.rows()).hasSizeGreaterThan(90).allSatisfy(row -> {
            assertThat(threads.read(row.thread().designation())).isEqualTo(row.thread());
            assertThat(threads.row(row.thread())).contains(row);
        });
    }

    /** The basic minor diameter is the least of class 6H; that of class 2B is the same, printed to three places. */
    @Test
    void the_least_limit_of_the_minor_diameter_is_the_basic_one() {
        assertThat(threads.rows()).allSatisfy(row -> {
            double rounding = row.thread().series().isInch() ? 0.0008 * 25.4 : 0.001;
            assertThat(row.thread().minor()).isCloseTo(row.minorLeast(), within(rounding));
        });
    }

    /** Printed stress areas carry three figures. */
    @Test
    void every_printed_stress_area_follows_the_formula() {
        assertThat(threads.rows())
                .allSatisfy(row -> assertThat(row.thread().stressArea() / row.stressArea())
                        .as(row.thread().designation())
                        .isCloseTo(1, within(0.006)));
    }
}

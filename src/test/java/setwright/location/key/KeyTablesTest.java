package setwright.location.key;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.quantity.CsvRows;
import setwright.quantity.Unit;

/** Keys and their seats beside whole tables; each table names its source, and what of it is only remembered. */
class KeyTablesTest {
    private static final double EXACT = 1e-9;
    private static final double THOUSANDTH = 0.0011;

    static List<CsvRows.Row> din() {
        return CsvRows.beside(KeyTablesTest.class, "key-din6885-published.csv");
    }

    static List<CsvRows.Row> asme() {
        return CsvRows.beside(KeyTablesTest.class, "key-b17-1-published.csv");
    }

    static List<CsvRows.Row> woodruffInch() {
        return CsvRows.beside(KeyTablesTest.class, "woodruff-inch-published.csv");
    }

    static List<CsvRows.Row> woodruffMetric() {
        return CsvRows.beside(KeyTablesTest.class, "woodruff-metric.csv");
    }

    static List<CsvRows.Row> woodruffNumbers() {
        return CsvRows.beside(KeyTablesTest.class, "woodruff-numbers.csv");
    }

    @ParameterizedTest
    @MethodSource("din")
    void a_metric_shaft_has_its_key_from_just_over_its_range_to_the_end_of_it(CsvRows.Row row) {
        double to = row.number("d_to");
        for (double shaft : new double[] {row.number("d_over") + 0.01, to}) {
            KeyRow key = KeyStandard.DIN.key(shaft).orElseThrow();
            assertThat(key.width()).isEqualTo(row.number("b"));
            assertThat(key.height()).isEqualTo(row.number("h"));
            assertThat(key.depth()).isEqualTo(row.number("t1_shaft"));
        }
        double rise = KeySeat.riseOfArc(to, row.number("b"));
        assertThat(to - row.number("t1_shaft")).isCloseTo(row.number("d_minus_t1_at_d_to"), within(EXACT));
        assertThat(rise).isCloseTo(row.number("arc_Y_at_d_to"), within(0.0006));
        assertThat(row.number("t1_shaft") - rise).isCloseTo(row.number("slot_wall_depth_at_d_to"), within(0.0006));
    }

    @ParameterizedTest
    @MethodSource("asme")
    void an_inch_shaft_has_its_key_and_is_gauged_as_the_table_prints(CsvRows.Row row) {
        double shaft = row.number("shaft_D");
        KeyRow key = KeyStandard.ASME.key(Unit.IN.toInside(shaft)).orElseThrow();
        double width = row.number("key_W_square");

        assertThat(Unit.IN.fromInside(key.width())).isCloseTo(width, within(EXACT));
        assertThat(overOpposite(shaft, width, width)).isCloseTo(row.number("S_square"), within(THOUSANDTH));
        assertThat(overOpposite(shaft, width, row.number("key_H_rect")))
                .isCloseTo(row.number("S_rect"), within(THOUSANDTH));
        assertThat(acrossHub(shaft, width, width)).isCloseTo(row.number("T_square"), within(THOUSANDTH));
        assertThat(acrossHub(shaft, width, row.number("key_H_rect")))
                .isCloseTo(row.number("T_rect"), within(THOUSANDTH));
    }

    /** As the figure works it: half the height at the side, the rise of the arc on top of it. */
    private static double overOpposite(double shaft, double width, double height) {
        double wall = KeySeat.HALF_HEIGHT.kernel().applyAsDouble(new double[] {height});
        double fromTop = KeySeat.FROM_TOP.kernel().applyAsDouble(new double[] {wall, KeySeat.riseOfArc(shaft, width)});
        return KeySeat.OVER_OPPOSITE.kernel().applyAsDouble(new double[] {shaft, fromTop});
    }

    private static double acrossHub(double shaft, double width, double height) {
        return Unit.IN.fromInside(
                KeySeat.hubAcross(Unit.IN.toInside(shaft), Unit.IN.toInside(width), Unit.IN.toInside(height)));
    }

    @ParameterizedTest
    @MethodSource("woodruffInch")
    void an_inch_woodruff_key_has_the_seat_of_the_table(CsvRows.Row row) {
        Woodruff key = Woodruff.called(row.text("w") + " x " + row.text("D").replace(' ', '-'))
                .orElseThrow();

        assertThat(Unit.IN.fromInside(key.height())).isCloseTo(row.number("height_b"), within(EXACT));
        assertThat(Unit.IN.fromInside(key.depth())).isCloseTo(row.number("shaft_depth"), within(EXACT));
        assertThat(Unit.IN.fromInside(key.inHub())).isCloseTo(row.number("hub_depth"), within(EXACT));
    }

    @ParameterizedTest
    @MethodSource("woodruffMetric")
    void a_metric_woodruff_key_has_the_seat_of_the_table(CsvRows.Row row) {
        Woodruff key = Woodruff.called(row.text("b") + "x" + row.text("D")).orElseThrow();

        assertThat(key.height()).isEqualTo(row.number("h"));
        assertThat(key.depth()).isEqualTo(row.number("t1_shaft"));
        assertThat(key.inHub()).isEqualTo(row.number("t2_hub"));
    }

    /** Two metric keys, 6 x 28 and 8 x 32, stand in the table without a depth and are not listed. */
    @Test
    void a_woodruff_number_names_its_width_and_diameter() {
        for (CsvRows.Row row : woodruffNumbers()) {
            if (row.text("unit").equals("in")) {
                Woodruff key = Woodruff.called(row.text("number")).orElseThrow();
                assertThat(Unit.IN.fromInside(key.width())).isCloseTo(row.number("width"), within(EXACT));
                assertThat(Unit.IN.fromInside(key.diameter())).isCloseTo(row.number("cutter_or_key_d"), within(EXACT));
                assertThat(Unit.IN.fromInside(key.height())).isCloseTo(row.number("key_height"), within(EXACT));
                assertThat(Unit.IN.fromInside(key.depth())).isCloseTo(row.number("shaft_depth"), within(0.00011));
            }
        }
        assertThat(Woodruff.called("606").map(Woodruff::name)).contains("3/16 x 3/4");
        assertThat(Woodruff.called("6 x 28")).isEmpty();
    }
}

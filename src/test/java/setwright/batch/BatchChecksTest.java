package setwright.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.Rounds;
import setwright.quantity.CsvRows;

class BatchChecksTest {
    static List<CsvRows.Row> checks() {
        return CsvRows.beside(BatchChecksTest.class, "batch-checks.csv");
    }

    /** The kernels are linear in their times, so that examples in minutes stay in minutes. */
    @ParameterizedTest
    @MethodSource("checks")
    void worked_examples_come_out_as_their_sources_print_them(CsvRows.Row check) {
        double[] v = Arrays.stream(check.text("inputs").split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        double found = switch (check.text("what")) {
            case "break-even equal at" -> breakEven(v).equalAt().orElseThrow();
            case "break-even parts" -> breakEven(v).parts().orElseThrow();
            case "break-even gains from" -> breakEven(v).gainsFrom().orElseThrow();
            case "plain" -> BatchTime.plain(v[0], v[1], v[2]);
            case "each part complete" -> BatchTime.eachPartComplete(batch(v));
            case "reversing order" -> BatchTime.reversingOrder(batch(v));
            case "one tool through batch" -> BatchTime.oneToolThroughBatch(batch(v));
            case "switch point" -> BatchTime.switchPoint(v[0], v[1], v[2]);
            default -> throw new IllegalArgumentException(check.text("what"));
        };

        assertThat(found).isCloseTo(check.number("result"), within(check.number("tolerance")));
    }

    private static BreakEven breakEven(double[] v) {
        return new BreakEven(v[0], v[1], v[2], v[3], v[4]);
    }

    private static Batch batch(double[] v) {
        return new Batch(v[0], v[1], v[2], v[3], v[4], v[5]);
    }

    @Test
    void set_up_times_move_the_break_even() {
        assertThat(new BreakEven(45, 3.5, 0.5, 10, 25).equalAt().orElseThrow()).isCloseTo(20, within(1e-9));
        assertThat(new BreakEven(45, 3.5, 0.5, 100, 5).equalAt().orElseThrow()).isZero();
    }

    @Test
    void what_saves_nothing_never_pays() {
        assertThat(BreakEven.of(45, 3.5, 3.5).parts()).isEmpty();
        assertThat(BreakEven.of(45, 3.5, 4).gainsFrom()).isEmpty();
    }

    @Test
    void one_tool_has_no_switch_point() {
        assertThat(BatchTime.switchPoint(new Batch(20, 1, 1.5, 0.6, 6, 45))).isEmpty();
        assertThat(BatchTime.switchPoint(new Batch(20, 4, 1.5, 0.6, 6, 45)).orElseThrow())
                .isCloseTo(1.9, within(1e-9));
        assertThatThrownBy(() -> new Batch(0, 4, 1.5, 0.6, 6, 45)).hasMessageContaining("0.0 parts");
    }

    /** Independent of the formula of the switch point: the two totals themselves. */
    @Test
    void the_switch_point_is_where_the_two_orders_change_places() {
        Rounds.each(71, (random, round) -> {
            double parts = random.nextInt(2, 500);
            double tools = random.nextInt(2, 12);
            double change = random.nextDouble(5, 300);
            double load = BatchTime.switchPoint(parts, tools, change);
            var quicker = new Batch(parts, tools, change, 0.99 * load, 100, 0);
            var slower = new Batch(parts, tools, change, 1.01 * load, 100, 0);

            assertThat(BatchTime.oneToolThroughBatch(quicker)).isLessThan(BatchTime.eachPartComplete(quicker));
            assertThat(BatchTime.oneToolThroughBatch(slower)).isGreaterThan(BatchTime.eachPartComplete(slower));
        });
    }
}

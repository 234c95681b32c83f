package setwright.location;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.Rounds;
import setwright.location.Dial.Approach;
import setwright.quantity.CsvRows;

class DialTest {
    static List<CsvRows.Row> checks() {
        return CsvRows.beside(DialTest.class, "dial-checks.csv");
    }

    @ParameterizedTest
    @MethodSource("checks")
    void turns_and_divisions_are_exact(CsvRows.Row check) {
        var dial = new Dial(decimal(check, "perTurn"), decimal(check, "division"));
        var move = dial.move(decimal(check, "distance"), decimal(check, "from"));

        assertThat(move.turns()).isEqualTo((int) check.number("turns"));
        assertThat(move.reading()).isEqualByComparingTo(decimal(check, "reading"));
        assertThat(move.divisions()).isEqualByComparingTo(decimal(check, "divisions"));
        assertThat(move.leftOver()).isEqualByComparingTo(decimal(check, "leftOver"));
    }

    @Test
    void a_length_in_millimetres_is_the_decimal_that_was_meant() {
        assertThat(Dial.exact(1.4 * 25.4)).isEqualByComparingTo("35.56");
        var inches = new Dial(Dial.exact(0.2 * 25.4), Dial.exact(0.001 * 25.4));

        assertThat(inches.move(Dial.exact(1.4 * 25.4)).turns()).isEqualTo(7);
        assertThat(inches.move(Dial.exact(1.4 * 25.4)).divisions()).isEqualByComparingTo("0");
    }

    /** DL-08: from 2.000 to 1.500 upwards with 0.012 backlash and 0.050 over: to 1.438, then 1.500. */
    @Test
    void backlash_is_taken_up_on_the_asked_side() {
        var beyond = new BigDecimal("0.062");

        assertThat(stops("2.000", "1.500", Approach.UP, beyond)).containsExactly(num("1.438"), num("1.500"));
        assertThat(stops("1.000", "1.500", Approach.UP, beyond)).containsExactly(num("1.500"));
        assertThat(stops("1.000", "1.500", Approach.DOWN, beyond)).containsExactly(num("1.562"), num("1.500"));
        assertThat(stops("2.000", "1.500", Approach.DOWN, beyond)).containsExactly(num("1.500"));
    }

    @Test
    void a_dial_has_a_lead_and_smaller_divisions() {
        assertThatThrownBy(() -> new Dial(num("0"), num("0.001"))).hasMessageContaining("a lead per turn");
        assertThatThrownBy(() -> new Dial(num("0.1"), num("0.2"))).hasMessageContaining("a lead per turn");
    }

    /** Turns and reading make up the way exactly, and the reading is less than a turn. */
    @Test
    void nothing_is_lost_between_turns_and_divisions() {
        Rounds.each(61, (random, round) -> {
            var perTurn = BigDecimal.valueOf(random.nextInt(1, 400) * 25L, 3);
            var dial = new Dial(perTurn, perTurn.divide(BigDecimal.valueOf(100)));
            var from = BigDecimal.valueOf(random.nextLong(0, 1_000_000), 4).remainder(perTurn);
            var distance = BigDecimal.valueOf(random.nextLong(-10_000_000, 10_000_000), 4);
            var move = dial.move(distance, from);

            assertThat(perTurn.multiply(BigDecimal.valueOf(move.turns())).add(move.reading()))
                    .isEqualByComparingTo(from.add(distance));
            assertThat(move.reading()).isBetween(BigDecimal.ZERO, perTurn).isNotEqualByComparingTo(perTurn);
            assertThat(move.divisions().multiply(dial.division()))
                    .isCloseTo(move.reading(), within(new BigDecimal("1e-25")));
            assertThat(move.leftOver().abs().multiply(BigDecimal.valueOf(2))).isLessThanOrEqualTo(dial.division());
        });
    }

    @Test
    void whole_turns_in_inches_are_whole_turns() {
        Rounds.each(62, (random, round) -> {
            int turns = random.nextInt(1, 200);
            double perTurn = random.nextInt(1, 500) / 1000.0;
            var dial = new Dial(Dial.exact(perTurn * 25.4), Dial.exact(perTurn * 25.4 / 100));
            var move = dial.move(Dial.exact(turns * perTurn * 25.4));

            assertThat(move.turns()).isEqualTo(turns);
            assertThat(move.reading()).isEqualByComparingTo("0");
        });
    }

    private static List<BigDecimal> stops(String from, String to, Approach approach, BigDecimal beyond) {
        return Dial.stops(num(from), num(to), approach, beyond);
    }

    private static BigDecimal num(String text) {
        return new BigDecimal(text);
    }

    private static BigDecimal decimal(CsvRows.Row row, String column) {
        return new BigDecimal(row.text(column));
    }
}

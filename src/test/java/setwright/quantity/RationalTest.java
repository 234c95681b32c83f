package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

class RationalTest {
    @Test
    void one_and_four_tenths_by_two_tenths_is_seven_turns_on_a_dial() {
        Rational turns = Rational.asWritten(1.4).over(Rational.asWritten(0.2));

        assertThat(turns).isEqualTo(Rational.of(7));
        assertThat(1.4 / 0.2).isNotEqualTo(7);
    }

    @Test
    void a_fraction_is_kept_in_lowest_terms_with_its_sign_above() {
        assertThat(Rational.of(6, -8)).isEqualTo(new Rational(BigInteger.valueOf(-3), BigInteger.valueOf(4)));
        assertThat(Rational.of(0, -8)).isEqualTo(Rational.ZERO);
        assertThat(Rational.of(8, 2).isWhole()).isTrue();
        assertThat(Rational.of(9, 2).isWhole()).isFalse();
    }

    @Test
    void the_floor_of_a_negative_number_lies_below_it() {
        assertThat(Rational.of(-7, 2).floor()).isEqualTo(-4);
        assertThat(Rational.of(-8, 2).floor()).isEqualTo(-4);
        assertThat(Rational.of(7, 2).floor()).isEqualTo(3);
    }

    @Test
    void a_decimal_is_what_it_says() {
        assertThat(Rational.decimal("1.2e-5")).isEqualTo(Rational.of(12, 1_000_000));
        assertThat(Rational.decimal("2.5e3")).isEqualTo(Rational.of(2500));
        assertThat(Rational.decimal(".500")).isEqualTo(Rational.of(1, 2));
    }

    @Test
    void nothing_is_divided_by_zero() {
        assertThatThrownBy(() -> Rational.ONE.over(Rational.ZERO)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void sums_and_products_are_those_of_decimals() {
        Rounds.each(41, (random, round) -> {
            BigDecimal a = BigDecimal.valueOf(random.nextLong(-1_000_000, 1_000_000), 3);
            BigDecimal b = BigDecimal.valueOf(random.nextLong(-1_000_000, 1_000_000), 4);
            Rational x = Rational.decimal(a.toString());
            Rational y = Rational.decimal(b.toString());

            assertThat(x.plus(y).nearest()).isEqualTo(a.add(b).doubleValue());
            assertThat(x.minus(y).nearest()).isEqualTo(a.subtract(b).doubleValue());
            assertThat(x.times(y).nearest()).isEqualTo(a.multiply(b).doubleValue());
            assertThat(Integer.signum(x.compareTo(y))).isEqualTo(a.compareTo(b));
        });
    }

    @Test
    void a_double_comes_back_as_it_is_written() {
        Rounds.each(42, (random, round) -> {
            double number = random.nextDouble(-1e6, 1e6);
            assertThat(Rational.asWritten(number).nearest()).isEqualTo(number);
        });
    }
}

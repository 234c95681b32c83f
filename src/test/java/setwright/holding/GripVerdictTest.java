package setwright.holding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GripVerdictTest {
    @ParameterizedTest
    @CsvSource({
        "1.29, 5, STOP",
        "5, 0.79, STOP",
        "1.3, 5, CAUTION",
        "1.99, 5, CAUTION",
        "5, 0.8, CAUTION",
        "5, 0.99, CAUTION",
        "2, 1, HOLDS",
        "99, 99, HOLDS",
        "0, 0, STOP",
    })
    void stop_below_1_3_or_0_8_and_caution_below_2_or_1(double expected, double pessimistic, GripVerdict verdict) {
        assertThat(GripVerdict.of(new HoldFactor(expected, pessimistic))).isEqualTo(verdict);
    }

    @Test
    void a_shop_may_ask_for_more() {
        GripLimits careful = new GripLimits(2, 1, 3, 1.5);

        assertThat(GripVerdict.of(new HoldFactor(2.5, 1.2), careful)).isEqualTo(GripVerdict.CAUTION);
        assertThat(GripVerdict.of(new HoldFactor(1.9, 1.2), careful)).isEqualTo(GripVerdict.STOP);
    }

    @Test
    void limits_that_would_stop_above_where_they_caution_are_refused() {
        assertThatThrownBy(() -> new GripLimits(2, 1, 1.5, 1)).hasMessageContaining("1.5 over 2.0");
    }
}

package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    /** The published factors have fifteen digits. */
    @ParameterizedTest
    @CsvFileSource(resources = "unit-factors.csv", numLinesToSkip = 1)
    void a_factor_agrees_with_the_published_one(Unit unit, double inside, String source) {
        assertThat(unit.toInside(1)).as(source).isCloseTo(inside, within(5e-15 * inside));
        assertThat(unit.fromInside(inside)).as(source).isCloseTo(1, within(5e-15));
    }

    /** Definitions: inch and pound by the international agreement of 1959, standard gravity 9.80665 m/s². */
    @Test
    void the_exact_units_are_exact() {
        assertThat(Unit.IN.factor()).isEqualTo(Rational.decimal("25.4"));
        assertThat(Unit.LB.factor()).isEqualTo(Rational.decimal("0.45359237"));
        assertThat(Unit.LBF.factor()).isEqualTo(Rational.decimal("4.4482216152605"));
        assertThat(Unit.LBF_IN.factor()).isEqualTo(Rational.decimal("112.9848290276167"));
        assertThat(Unit.CM3_PER_MIN.factor()).isEqualTo(Rational.of(50, 3));
    }

    @Test
    void a_turn_is_two_pi() {
        assertThat(Unit.DEG.toInside(180)).isEqualTo(Math.PI);
        assertThat(Unit.RPM.toInside(60)).isCloseTo(2 * Math.PI, within(1e-15));
        assertThat(Unit.DEG.factor().over(Unit.ARC_MINUTE.factor())).isEqualTo(Rational.of(60));
        assertThat(Unit.ARC_MINUTE.factor().over(Unit.ARC_SECOND.factor())).isEqualTo(Rational.of(60));
    }

    /** From memory: the power constants of the handbooks in kW·s/cm³ are 2.73 times those in hp·min/in³. */
    @Test
    void unit_power_of_the_inch_handbooks_is_a_factor_of_2_73() {
        assertThat(Unit.HP_MIN_PER_IN3.toInside(1) / Unit.KW_S_PER_CM3.toInside(1))
                .isCloseTo(2.73, within(0.005));
    }

    @ParameterizedTest
    @EnumSource
    void every_unit_can_be_written_in_ascii(Unit unit) {
        assertThat(spellings(unit)).anyMatch(spelling -> spelling.chars().allMatch(letter -> letter < 128));
    }

    @ParameterizedTest
    @EnumSource
    void no_spelling_means_two_units_of_a_dimension(Dimension dimension) {
        List<String> all = new ArrayList<>();
        Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == dimension)
                .forEach(unit -> all.addAll(
                        spellings(unit).map(UnitTest::small).distinct().toList()));
        assertThat(all).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource
    void a_measure_accepts_the_units_it_is_printed_in(Measure measure) {
        assertThat(measure.accepted())
                .contains(measure.unit(UnitSystem.METRIC), measure.unit(UnitSystem.INCH))
                .allMatch(unit -> unit.dimension() == measure.dimension());
    }

    @Test
    void a_length_is_not_typed_as_a_feed_per_tooth() {
        assertThat(Measure.LENGTH.accepted()).doesNotContain(Unit.MM_PER_TOOTH, Unit.IN_PER_REV);
        assertThat(Measure.FEED_PER_TOOTH.accepted())
                .contains(Unit.MM, Unit.IN, Unit.THOU, Unit.MM_PER_TOOTH)
                .doesNotContain(Unit.MM_PER_REV);
    }

    private static Stream<String> spellings(Unit unit) {
        return Stream.concat(Stream.of(unit.symbol()), unit.otherSpellings().stream());
    }

    private static String small(String spelling) {
        return spelling.toLowerCase(Locale.ROOT);
    }
}

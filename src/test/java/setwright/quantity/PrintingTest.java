package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import setwright.Rounds;

class PrintingTest {
    private final Printing metric = new Printing(UnitSystem.METRIC);
    private final Printing inch = new Printing(UnitSystem.INCH);

    @ParameterizedTest
    @CsvSource({
        "12.7, 12.7 mm, 0.500 in",
        "38, 38 mm, 1.496 in",
        "25.4, 25.4 mm, 1.000 in",
        "1.5875, 1.59 mm, 0.0625 in",
        "12.018, 12.018 mm, 0.473 in",
        "12.0184, 12.02 mm, 0.473 in",
        "0.005, 0.005 mm, 0.0002 in",
        "0.0312, 0.031 mm, 0.0012 in",
        "0, 0 mm, 0.000 in",
        "-0.0000000001, 0 mm, 0.000 in",
        "-3.175, -3.175 mm, -0.125 in",
        "2.675, 2.675 mm, 0.105 in",
        "1234.5678, 1234.57 mm, 48.605 in"
    })
    void a_length_is_printed_as_each_reads_it(double mm, String millimetres, String inches) {
        assertThat(metric.of(Measure.LENGTH, mm)).isEqualTo(millimetres);
        assertThat(inch.of(Measure.LENGTH, mm)).isEqualTo(inches);
    }

    @ParameterizedTest
    @CsvSource({
        "SPINDLE_SPEED, 795.7747, 796 rev/min, 796 rev/min",
        "FEED, 127, 127 mm/min, 5 in/min",
        "FEED, 3.175, 3.2 mm/min, 0.13 in/min",
        "CUTTING_SPEED, 27.432, 27 m/min, 90 ft/min",
        "CUTTING_SPEED, 8.36, 8.4 m/min, 27 ft/min",
        "POWER, 1.2345, 1.2 kW, 1.7 hp",
        "POWER, 0.0745699871582, 0.075 kW, 0.1 hp",
        "FORCE, 1234.5, 1230 N, 278 lbf",
        "FORCE, 12.345, 12.3 N, 2.78 lbf",
        "FORCE, 98765, 98800 N, 22200 lbf",
        "TORQUE, 65.079, 65.1 N·m, 48 lbf·ft",
        "STRESS, 1780, 1780 N/mm², 1780 N/mm²",
        "FEED_PER_TOOTH, 0.0508, 0.051 mm/tooth, 0.002 in/tooth",
        "FEED_PER_REV, 0.1, 0.1 mm/rev, 0.0039 in/rev",
        "ANGLE, 34.254, 34.25°, 34.25°",
        "ANGLE, 118, 118°, 118°",
        "SMALL_LENGTH, 12.34, 12.3 µm, 0.49 thou",
        "SECONDS, 8.36, 8.4 s, 8.4 s",
        "SECONDS, 83.6, 84 s, 84 s",
        "TIME, 12.34, 12.3 min, 12.3 min",
        "TIME, 2755.6, 2756 min, 2756 min",
        "DENSITY, 7850, 7850 kg/m³, 0.2836 lb/in³",
        "STIFFNESS, 10000, 10000 N/mm, 57100 lbf/in",
        "EXPANSION, 0.0000115, 0.0000115 1/K, 0.0000115 1/K",
        "PERCENT, 76.7, 77 %, 77 %",
        "RATIO, 0.2, 0.2, 0.2",
        "RATIO, 2.345, 2.3, 2.3",
        "RATIO, 127, 127, 127",
        "RATIO, 127.5, 130, 130"
    })
    void other_quantities_have_the_digits_that_are_worth_reading(
            Measure measure, double number, String forMetric, String forInch) {
        double inside = measure.unit(UnitSystem.METRIC).toInside(number);
        assertThat(metric.of(measure, inside)).isEqualTo(forMetric);
        assertThat(inch.of(measure, inside)).isEqualTo(forInch);
    }

    @Test
    void a_band_has_two_figures_and_no_more() {
        assertThat(metric.band(Measure.RATIO, 2, 5)).isEqualTo("2 to 5");
        assertThat(metric.band(Measure.RATIO, 1.2345, 4.5678)).isEqualTo("1.2 to 4.6");
        assertThat(metric.band(Measure.FORCE, 5123, 24_987)).isEqualTo("5100 to 25000 N");
        assertThat(metric.band(Measure.FORCE, new Band(5123, 15_000, 24_987))).isEqualTo("5100 to 25000 N");
        assertThat(metric.band(Measure.RATIO, 2.31, 2.33)).isEqualTo("2.3");
        assertThat(metric.factor(2.345)).isEqualTo("2.3");
    }

    @ParameterizedTest
    @CsvSource({
        "12.7, 1/2 in",
        "38.1, 1-1/2 in",
        "-4.7625, -3/16 in",
        "50.8, 2 in",
        "0, 0 in",
        "0.396875, 1/64 in",
        "12, 0.472 in",
        "5.1054, 0.201 in",
        "0.1984375, 0.0078 in",
        "-12, -0.472 in"
    })
    void an_exact_part_of_an_inch_is_printed_as_a_fraction_where_one_is_asked(double mm, String inches) {
        assertThat(inch.fractionOrDecimal(mm)).isEqualTo(inches);
    }

    @Test
    void fractions_are_for_inch_people() {
        assertThat(metric.fractionOrDecimal(12.7)).isEqualTo("12.7 mm");
    }

    @Test
    void an_angle_is_printed_in_minutes_and_seconds_where_they_are_asked() {
        assertThat(metric.degreesMinutesSeconds(Math.toRadians(34.25))).isEqualTo("34°15'");
        assertThat(metric.degreesMinutesSeconds(Math.toRadians(34.26))).isEqualTo("34°15'36\"");
        assertThat(metric.degreesMinutesSeconds(Math.toRadians(-34.01))).isEqualTo("-34°0'36\"");
        assertThat(metric.degreesMinutesSeconds(Math.toRadians(59.99999))).isEqualTo("60°");
        assertThat(metric.degreesMinutesSeconds(-1e-9)).isEqualTo("0°");
    }

    @Test
    void a_number_of_places_can_be_asked_for() {
        assertThat(metric.of(Measure.LENGTH, 12, 3)).isEqualTo("12.000 mm");
        assertThat(metric.of(Measure.LENGTH, -0.0004, 3)).isEqualTo("0.000 mm");
        assertThat(inch.of(Measure.LENGTH, 12.7, 4)).isEqualTo("0.5000 in");
    }

    @ParameterizedTest
    @EnumSource
    void what_is_printed_is_read_back_as_the_same_print(Measure measure) {
        Rounds.each(48, (random, round) -> {
            UnitSystem units = random.nextBoolean() ? UnitSystem.METRIC : UnitSystem.INCH;
            Printing printing = new Printing(units);
            double number = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-2, 5));
            double inside = measure.unit(units).toInside(number);
            String printed = printing.of(measure, inside);

            double read = new Reading(UnitSystem.METRIC).inside(measure, printed);
            assertThat(printing.of(measure, read)).isEqualTo(printed);
            assertThat(measure.unit(units).fromInside(read)).isCloseTo(number, within(0.05 * Math.abs(number) + 1e-9));
            assertThat(printed).doesNotContain("E").doesNotMatch("-0(\\.0*)?\\D*");
        });
    }

    @Test
    void a_fraction_that_is_printed_is_read_back_exactly() {
        Rounds.each(49, (random, round) -> {
            Rational inches = Rational.of(random.nextInt(-640, 640), 64);
            double mm = inches.times(Definitions.INCH).nearest();
            assertThat(new Reading(UnitSystem.METRIC).inside(Measure.LENGTH, inch.fractionOrDecimal(mm)))
                    .isEqualTo(mm);
        });
    }

    @Test
    void an_angle_that_is_printed_in_seconds_is_read_back_to_the_second() {
        Rounds.each(50, (random, round) -> {
            double rad = random.nextDouble(-7, 7);
            double read = new Reading(UnitSystem.METRIC).inside(Measure.ANGLE, metric.degreesMinutesSeconds(rad));
            assertThat(read).isCloseTo(rad, within(Math.PI / 648_000 / 2 + 1e-12));
        });
    }
}

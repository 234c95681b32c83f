package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static setwright.quantity.UnitSystem.INCH;
import static setwright.quantity.UnitSystem.METRIC;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.Rounds;

class ReadingTest {
    private final Reading metric = new Reading(METRIC);
    private final Reading inch = new Reading(INCH);

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
                    1/2 in            | 12.7
                    1/2in             | 12.7
                    1/2 in.           | 12.7
                    1/2 IN            | 12.7
                    1/2 inch          | 12.7
                    1-1/2"            | 38.1
                    1-1/2 ″           | 38.1
                    1 1/2 in          | 38.1
                    1   1/2 in        | 38.1
                    1 - 1/2 in        | 12.7
                    1 -1/2 in         | 12.7
                    (1 - 1/2) in      | 12.7
                    3/4-1/8           | 0.625
                    (3/4-1/8) in      | 15.875
                    (3/4 - 1/8) in    | 15.875
                    2-1/4-1/8         | 2.125
                    1½ in             | 38.1
                    1 ⅜"              | 34.925
                    ¾ - ⅛ in          | 15.875
                    38 mm             | 38
                    38MM              | 38
                    5thou             | 0.127
                    .500              | 0.5
                    .500 in           | 12.7
                    5.                | 5
                    20 + 3.5          | 23.5
                    20 + 3.5 mm       | 23.5
                    20 mm + 3.5       | 23.5
                    20 + 3 + 1/2 in   | 596.9
                    20 − 3.5          | 16.5
                    2*12.7 mm         | 25.4
                    12.7 mm*2         | 25.4
                    2 * 1-1/2 in      | 76.2
                    3/4*2 in          | 38.1
                    1/2*3 in          | 38.1
                    1/2/2 in          | 6.35
                    1/(2) in          | 12.7
                    1 in + 3 mm       | 28.4
                    1in+3mm           | 28.4
                    2*(1 in + 3 mm)   | 56.8
                    (1 in + 3 mm)/2   | 14.2
                    -1/2 in           | -12.7
                    -(1 in + 3 mm)    | -28.4
                    1 in - -3 mm      | 28.4
                    +5                | 5
                    ((5))             | 5
                    5 ft 3-1/2 in     | 1612.9
                    1.2e1 mm          | 12
                    12 µm             | 0.012
                    12 um             | 0.012
                    3 microns         | 0.003
                    2.5 cm            | 25
                    """)
    void a_length_is_read_as_people_write_it(String text, double mm) {
        assertThat(metric.inside(Measure.LENGTH, text)).isEqualTo(mm);
    }

    @Test
    void a_bare_number_takes_the_unit_of_the_person() {
        assertThat(metric.length("1-1/2").value().mm()).isEqualTo(1.5);
        assertThat(inch.length("1-1/2").value().mm()).isEqualTo(38.1);
        assertThat(inch.length("1 - 1/2").value().mm()).isEqualTo(12.7);
        assertThat(inch.length("1/2 in + 1/4").value().mm()).isEqualTo(19.05);
        assertThat(inch.angle("90 - 34°15'").value().rad())
                .isEqualTo(metric.angle("55.75").value().rad());
        assertThat(inch.feed("10").value().mmPerS()).isCloseTo(254 / 60.0, within(1e-15));
        assertThat(inch.cuttingSpeed("90").value().mmPerS()).isEqualTo(457.2);
        assertThat(inch.force("100").value().n()).isEqualTo(444.82216152605);
        assertThat(inch.torque("1").value().nmm()).isEqualTo(1355.8179483314004);
        assertThat(metric.time("1").value().s()).isEqualTo(60);
        assertThat(metric.ratio("0.2").value().value()).isEqualTo(0.2);
        assertThat(metric.ratio(Measure.PERCENT, "75").value().value()).isEqualTo(0.75);
        assertThat(metric.ratio("75 %").value().value()).isEqualTo(0.75);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
                    34°15'       | 34.25
                    34° 15'      | 34.25
                    34d15m       | 34.25
                    34 d 15 m    | 34.25
                    34.25 deg    | 34.25
                    34.25        | 34.25
                    34°15'36"    | 34.26
                    34d15m36s    | 34.26
                    34°15′36″    | 34.26
                    34°36"       | 34.01
                    34 deg 15 min| 34.25
                    -34°15'      | -34.25
                    15'          | 0.25
                    90° - 34°15' | 55.75
                    360/7        | 51.42857142857143
                    """)
    void an_angle_is_read_in_degrees_and_minutes(String text, double degrees) {
        assertThat(metric.angle(text).value().rad()).isCloseTo(Math.toRadians(degrees), within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "48ft-lb",
                "48 ft-lb",
                "48lbf·ft",
                "48 lbf*ft",
                "48 lbf-ft",
                "48 ft lb",
                "48 ftlb",
                "48 lb-ft",
                "576in-lb",
                "576lbf·in",
                "576 in lb",
                "24ft-lb*2",
                "40 ft-lb + 8 ft-lb",
                "40 ft-lb+96 in-lb",
                "40 ft-lb-(-96 in-lb)"
            })
    void a_torque_is_read_in_all_its_spellings(String text) {
        assertThat(metric.torque(text).value().nmm())
                .isEqualTo(Rational.decimal("48").times(Unit.LBF_FT.factor()).nearest());
    }

    @Test
    void other_quantities_are_read_as_people_write_them() {
        assertThat(metric.cuttingSpeed("90ft/min").value().mmPerS()).isEqualTo(457.2);
        assertThat(metric.cuttingSpeed("90 sfm").value().mmPerS()).isEqualTo(457.2);
        assertThat(metric.torque("25 Nm").value().nmm()).isEqualTo(25000);
        assertThat(metric.torque("25 N m").value().nmm()).isEqualTo(25000);
        assertThat(metric.force("5 kN").value().n()).isEqualTo(5000);
        assertThat(metric.force("100 N - 20 N").value().n()).isEqualTo(80);
        assertThat(metric.stress("1800 N/mm2").value().nPerMm2()).isEqualTo(1800);
        assertThat(metric.stress("210 GPa").value().nPerMm2()).isEqualTo(210_000);
        assertThat(metric.spindleSpeed("60 rpm").value().radPerS()).isEqualTo(2 * Math.PI);
        assertThat(metric.time("1 h 20 min").value().s()).isEqualTo(4800);
        assertThat(metric.length(Measure.FEED_PER_TOOTH, "0.002 in/tooth")
                        .value()
                        .mm())
                .isEqualTo(0.0508);
        assertThat(metric.length(Measure.FEED_PER_REV, "0.1 mm").value().mm()).isEqualTo(0.1);
        assertThat(metric.inside(Measure.EXPANSION, "11.5e-6 1/K")).isEqualTo(11.5e-6);
        assertThat(metric.inside(Measure.EXPANSION, "11.5e-6/K")).isEqualTo(11.5e-6);
        assertThat(metric.inside(Measure.TEMPERATURE_STEP, "9 °F")).isEqualTo(5);
        assertThat(metric.inside(Measure.TEMPERATURE_STEP, "5 °C")).isEqualTo(5);
    }

    @ParameterizedTest
    @EnumSource
    void every_spelling_of_every_unit_is_read(Measure measure) {
        for (Unit unit : measure.accepted()) {
            Stream<String> spellings = Stream.concat(Stream.of(unit.symbol()), unit.otherSpellings().stream());
            double expected = Rational.decimal("2.5").times(unit.factor()).nearest();
            assertThat(spellings.filter(spelling -> !spelling.isEmpty())).allSatisfy(spelling -> {
                assertThat(inch.inside(measure, "2.5 " + spelling)).isEqualTo(expected);
                assertThat(inch.inside(measure, "(5/4 + 5/4)" + spelling)).isEqualTo(expected);
                assertThat(inch.inside(measure, "2*1.25 " + spelling)).isEqualTo(expected);
            });
        }
    }

    @Test
    void a_drill_is_called_by_its_name_where_a_length_is_asked() {
        for (String text : List.of("#7", "# 7", "No 7", "No. 7", "no7", "number 7", "#7 drill")) {
            assertThat(metric.length(text).value().mm()).as(text).isEqualTo(5.1054);
            assertThat(metric.length(text).text()).isEqualTo(text);
        }
        for (String text : List.of("F", "f", "letter F", "F drill")) {
            assertThat(metric.length(text).value().mm()).as(text).isEqualTo(6.5278);
        }
        assertThat(metric.length("1/2 drill").value().mm()).isEqualTo(12.7);
        assertThat(metric.length("1/2").value().mm()).isEqualTo(0.5);
    }

    @Test
    void a_reading_is_worked_exactly_and_rounded_once() {
        assertThat(metric.length("1.4 in").value().mm()).isEqualTo(35.56);
        assertThat(1.4 * 25.4).isNotEqualTo(35.56);
        assertThat(metric.length("0.1 + 0.2").value().mm()).isEqualTo(0.3);
        assertThat(metric.exact(Measure.LENGTH, "1.4 in").over(metric.exact(Measure.LENGTH, "0.2 in")))
                .isEqualTo(Rational.of(7));
        assertThat(metric.length("1/3 in * 3").value().mm()).isEqualTo(25.4);
    }

    @Test
    void what_was_typed_is_kept_and_a_bare_number_gets_its_unit() {
        assertThat(metric.length(" 1/2 in ").text()).isEqualTo("1/2 in");
        assertThat(metric.length("20").text()).isEqualTo("20 mm");
        assertThat(inch.length("1-1/2").text()).isEqualTo("1-1/2 in");
        assertThat(metric.length("20 + 3.5").text()).isEqualTo("(20 + 3.5) mm");
        assertThat(metric.length("20 + 3.5 mm").text()).isEqualTo("20 + 3.5 mm");
        assertThat(metric.length("2 * (20mm + 3.5)").text()).isEqualTo("2 * (20mm + 3.5 mm)");
        assertThat(metric.angle("30").text()).isEqualTo("30°");
        assertThat(metric.ratio("0.2").text()).isEqualTo("0.2");
        assertThat(metric.ratio(Measure.PERCENT, "75").text()).isEqualTo("75 %");
    }

    @Test
    void a_typed_text_means_the_same_to_metric_and_inch_people() {
        Rounds.each(43, (random, round) -> {
            Reading reading = random.nextBoolean() ? metric : inch;
            String text = Expressions.bare(random, 3);
            Typed<Length> typed;
            try {
                typed = reading.length(text);
            } catch (Unreadable dividesByZero) {
                return;
            }
            assertThat(metric.length(typed.text())).as(text).isEqualTo(typed);
            assertThat(inch.length(typed.text())).as(text).isEqualTo(typed);
        });
    }

    @Test
    void sums_and_products_come_out_as_arithmetic_says() {
        Rounds.each(44, (random, round) -> {
            Expressions.Sum sum = Expressions.withUnits(random, 4);
            assertThat(metric.inside(Measure.LENGTH, sum.text()))
                    .as(sum.text())
                    .isCloseTo(sum.mm(), within(1e-9 * Math.max(1, Math.abs(sum.mm()))));
        });
    }

    @Test
    void a_decimal_in_millimetres_is_its_nearest_double() {
        Rounds.each(45, (random, round) -> {
            String text = BigDecimal.valueOf(random.nextLong(-10_000_000, 10_000_000), random.nextInt(0, 6))
                    .toPlainString();
            assertThat(metric.inside(Measure.LENGTH, text + " mm")).isEqualTo(Double.parseDouble(text) + 0.0);
        });
    }
}

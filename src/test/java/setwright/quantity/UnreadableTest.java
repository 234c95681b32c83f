package setwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.Rounds;

class UnreadableTest {
    private final Reading metric = new Reading(UnitSystem.METRIC);
    private final Reading inch = new Reading(UnitSystem.INCH);

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
                    38 kg          | 38 kg has kg, which is no unit of it; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    38 foo         | 38 foo has foo, which is no unit of it; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    5 ft-lb        | 5 ft-lb has ft-lb, which is no unit of it; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    0.1 mm/tooth   | 0.1 mm/tooth has mm/tooth, which is no unit of it; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    34°            | 34° has °, which is no unit of it; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    1,5            | 1,5 has a comma; the decimal sign is a point, so one and a half is 1.5, and thousands are written without a mark.
                    1,000.5 mm     | 1,000.5 mm has a comma; the decimal sign is a point, so one and a half is 1.5, and thousands are written without a mark.
                    NaN            | NaN has NaN where a number is expected; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    mm             | mm has mm where a number is expected; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    = 5            | = 5 has = where a number is expected; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    sin(30)        | sin(30) has sin where a number is expected; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    2 * x          | 2 * x has x where a number is expected; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    5 +            | 5 + ends where a number is expected; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    5 + * 3        | 5 + * 3 has * where a number is expected; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    ()             | () has ) where a number is expected; length is wanted, in mm, in, cm, m, µm, ft, thou.
                    (1 + 2         | (1 + 2 opens a bracket at place 1 and does not close it.
                    2*(1 + (2      | 2*(1 + (2 opens a bracket at place 8 and does not close it.
                    1 + 2)         | 1 + 2) closes a bracket at place 6 that was not opened.
                    38 mm 5        | 38 mm 5 has no + - * or / before 5.
                    38 mm (5)      | 38 mm (5) has no + - * or / before (5).
                    1/0            | 1/0 divides by zero.
                    1/(2-2) in     | 1/(2-2) in divides by zero.
                    2 mm * 3 mm    | 2 mm * 3 mm multiplies mm by mm; one of the two has to be a plain number.
                    1/(2 mm)       | 1/(2 mm) divides by a number of mm; divide by a plain number.
                    6 mm / 2 mm    | 6 mm / 2 mm divides by a number of mm; divide by a plain number.
                    1 in + 3       | 1 in + 3 has a number without a unit beside one in in; write the unit of each number, or one behind a bracket.
                    (1 in) mm      | (1 in) mm has mm behind a bracket that holds in already; write one of the two.
                    10-5/2         | 10-5/2 cannot be read: 10-5/2 is no mixed number, for 5/2 is not less than one; write blanks round a minus, or a + between.
                    1e999          | 1e999 cannot be read: 1e999 is beyond the numbers that can be computed with, about 1e-300 to 1e300.
                    1e400*1e10     | 1e400*1e10 is beyond the numbers that can be computed with, about 1e-300 to 1e300.
                    1e-400         | 1e-400 is beyond the numbers that can be computed with, about 1e-300 to 1e300.
                    #81            | #81 is not among the drill sizes, which run from #1 to #80, from A to Z and by 1/64 in to 1 in.
                    5/7 drill      | 5/7 drill is not among the drill sizes, which run from #1 to #80, from A to Z and by 1/64 in to 1 in.
                    5 ft 3         | 5 ft 3 needs the unit of the number behind ft, a smaller one than that.
                    5 ft 13 in     | 5 ft 13 in needs a whole number of ft, and in in less than one ft.
                    5.5 ft 3 in    | 5.5 ft 3 in needs a whole number of ft, and in in less than one ft.
                    """)
    void a_text_that_is_no_length_is_answered_with_one_sentence(String text, String message) {
        assertThatThrownBy(() -> metric.length(text))
                .isInstanceOf(Unreadable.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "\t\n"})
    void an_empty_text_is_answered_with_what_is_wanted(String text) {
        assertThatThrownBy(() -> inch.torque(text))
                .isInstanceOf(Unreadable.class)
                .hasMessage("Nothing is written; torque is wanted, in N·m, lbf·ft, N·mm, lbf·in.");
    }

    @Test
    void a_plain_number_is_wanted_without_a_unit() {
        assertThatThrownBy(() -> metric.ratio("0.2 mm"))
                .hasMessage("0.2 mm has mm, which is no unit of it; ratio is wanted, as a plain number or in %.");
    }

    @Test
    void minutes_of_an_angle_are_less_than_sixty() {
        assertThatThrownBy(() -> metric.angle("34°75'"))
                .hasMessage("34°75' needs a whole number of °, and in ' less than one °.");
        assertThatThrownBy(() -> metric.angle("34°15")).hasMessageContaining("smaller one");
        assertThatThrownBy(() -> metric.angle("15'34°")).hasMessageContaining("smaller one");
    }

    @Test
    void a_long_text_is_shown_by_its_start() {
        assertThatThrownBy(() -> metric.length("(".repeat(5000)))
                .isInstanceOf(Unreadable.class)
                .hasMessageStartingWith("(".repeat(60) + "... is longer than 200 letters");
        assertThatThrownBy(() -> metric.length(" ".repeat(100_000) + "x")).isInstanceOf(Unreadable.class);
        assertThatThrownBy(() -> metric.length("1" + " ".repeat(100_000) + "drill"))
                .isInstanceOf(Unreadable.class);
    }

    @ParameterizedTest
    @EnumSource
    void a_unit_of_another_kind_is_named_with_those_accepted(Measure measure) {
        for (Unit unit : Unit.values()) {
            if (unit.symbol().isEmpty() || measure.accepted().contains(unit)) {
                continue;
            }
            Throwable refused = catchThrowable(() -> metric.inside(measure, "5 " + unit.symbol()));
            if (refused == null) {
                // the same sign means something else there: ' and ", lb
                assertThat(unit.symbol().length()).isLessThanOrEqualTo(3);
            } else {
                assertThat(refused).isInstanceOf(Unreadable.class).hasMessageContaining(unit.symbol());
                assertThat(refused.getMessage())
                        .contains(measure.unit(UnitSystem.METRIC).symbol())
                        .contains(measure.unit(UnitSystem.INCH).symbol());
            }
        }
    }

    @Test
    void whatever_is_typed_is_read_or_answered_with_a_sentence() {
        Rounds.each(46, (random, round) -> {
            for (Measure measure : Measure.values()) {
                String text = scribble(random);
                Throwable refused = catchThrowable(() -> inch.inside(measure, text));
                if (refused != null) {
                    assertThat(refused).as(text).isExactlyInstanceOf(Unreadable.class);
                    assertThat(refused.getMessage()).endsWith(".").doesNotContain("!", "null");
                }
            }
        });
    }

    private static String scribble(RandomGenerator random) {
        String[] bits = {
            "1", "2", "0", "7/8", "1-1/2", ".5", ".", ",", "+", "-", "*", "/", "(", ")", " ", " ", "in", "mm", "\"",
            "'", "°", "d", "m", "ft-lb", "#", "F", "e5", "E", "=", "%", "µ", "drill", "\u00a0", "½", "𝟙", "\0", "No ",
            "h"
        };
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(12);
        for (int i = 0; i < length; i++) {
            text.append(bits[random.nextInt(bits.length)]);
        }
        return text.toString();
    }
}

package setwright.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.file.ShopFolder;
import setwright.file.ShopRead;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/** Names, keys, ranges and messages: what scripts rely on. */
class FigureContractTest {
    private static final Shop SHOP = ((ShopRead.Opened) ShopFolder.packed()).shop();

    private static Figure.Reply ask(String line, UnitSystem units) {
        Question question = Question.of(line);
        return Figures.required(question.figure()).ask(question, units, SHOP);
    }

    private static Answered answered(String line) {
        return ask(line, UnitSystem.METRIC).answered();
    }

    private static double number(String line, String name) {
        return answered(line).answers().stream()
                .filter(answer -> answer.name().equals(name))
                .map(Answer.Number.class::cast)
                .findFirst()
                .orElseThrow()
                .inUnit();
    }

    private static String words(String line, String name) {
        return answered(line).answers().stream()
                .filter(answer -> answer.name().equals(name))
                .map(Answer.Words.class::cast)
                .findFirst()
                .orElseThrow()
                .words();
    }

    @Test
    void the_first_twelve_figures_are_there() {
        assertThat(Figures.all().stream().map(Figure::name))
                .contains(
                        "speed-and-feed",
                        "spindle-speed",
                        "table-feed",
                        "chip-thickness",
                        "milling-load",
                        "drill-load",
                        "tap-torque",
                        "tool-deflection",
                        "hold-balance",
                        "tap-drill",
                        "thread",
                        "drill-size")
                .doesNotHaveDuplicates();
    }

    @Test
    void every_blank_of_a_sentence_is_an_input_and_every_required_input_has_a_blank() {
        for (Figure figure : Figures.all()) {
            for (Input input : figure.inputs()) {
                if (input.required()) {
                    assertThat(figure.sentence()).as(figure.name()).contains("{" + input.key() + "}");
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "spindle-speed diameter=12 | cutting-speed: it is missing; accepted: above 0 m/min.",
                "spindle-speed cutting-speed=30 diameter=0 | diameter: 0 is out of range; accepted: above 0 up to 3000 mm.",
                "spindle-speed cutting-speed=30 diameter=12 teeth=4 | teeth: spindle-speed has no such input; it takes cutting-speed, diameter.",
                "spindle-speed cutting-speed=30 diameter=12 diameter=13 | diameter: it stands twice; one is accepted.",
                "table-feed speed=500 teeth=1.5 feed-per-tooth=0.1 | teeth: '1.5' is not accepted; accepted: a whole number from 1 to 10000.",
                "table-feed speed=500 teeth=10001 feed-per-tooth=0.1 | teeth: '10001' is not accepted; accepted: a whole number from 1 to 10000.",
                "tap-drill thread=M8 stand=left | stand: 'left' is not accepted; accepted: all, metric, inch, number, letter, shop.",
                "chip-thickness feed-per-tooth=0.1 width=12 diameter=10 | width: 12 mm is wider than the cutter; accepted: above 0 up to its diameter, 10 mm.",
                "spindle-speeds cutting-speed=30 | There is no figure 'spindle-speeds'; near it: spindle-speed, cutting-speed, speed-and-feed; 'figure' alone lists them all.",
                "spindle-speed 30 | '30' has no key; inputs are written key=value."
            })
    void a_question_that_cannot_be_answered_says_which_input_and_what_is_accepted(String line, String message) {
        assertThatThrownBy(() -> answered(line)).isInstanceOf(Refusal.class).hasMessage(message);
    }

    @Test
    void a_decimal_comma_gets_one_clear_message() {
        assertThatThrownBy(() -> answered("spindle-speed cutting-speed=30,5 diameter=12"))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("cutting-speed: ")
                .hasMessageContaining("point");
    }

    @ParameterizedTest
    @CsvSource({
        "spindle-speed cutting-speed=30 diameter=12, false",
        "spindle-speed cutting-speed=300 diameter=12, true",
        "spindle-speed cutting-speed=1 diameter=100, true",
        "cutting-speed speed=6000 diameter=100, true",
        "cutting-speed speed=500 diameter=20, false"
    })
    void a_speed_that_no_milling_shop_meets_says_check_the_units(String line, boolean noted) {
        assertThat(answered(line).notes().contains("check the units")).isEqualTo(noted);
    }

    @Test
    void a_bare_number_takes_the_unit_of_the_person() {
        Figure.Reply inch = ask("spindle-speed cutting-speed=90 diameter=1/2", UnitSystem.INCH);
        Figure.Reply typed = ask("spindle-speed cutting-speed=90ft/min diameter=1/2in", UnitSystem.METRIC);
        assertThat(inch.answered().answers()).isEqualTo(typed.answered().answers());
    }

    @Test
    void a_word_without_a_key_belongs_to_the_value_before_it() {
        assertThat(answered("thread thread=1/4-20 UNC")).isEqualTo(answered("thread thread=1/4-20"));
        assertThat(number("spindle-speed cutting-speed=30 m/min diameter=1 1/2 in", "speed"))
                .isCloseTo(number("spindle-speed cutting-speed=30 diameter=38.1", "speed"), within(1e-9));
    }

    @Test
    void the_tap_drill_is_the_nearest_of_the_stand() {
        assertThat(words("tap-drill thread=1/4-20", "drill")).isEqualTo("#7");
        assertThat(words("tap-drill thread=M8", "drill")).isEqualTo("6.8 mm");
        assertThat(words("tap-drill thread=1/4-20 stand=metric", "drill")).isEqualTo("5.1 mm");
        assertThat(words("tap-drill thread=1/2-13 stand=inch", "drill")).isEqualTo("27/64 in");
        assertThat(number("tap-drill thread=M8 tap=form", "exact"))
                .isGreaterThan(number("tap-drill thread=M8", "exact"));
    }

    @Test
    void counts_are_whole_numbers_and_dial_turns_are_exact() {
        assertThat(answered("dial distance=1.4in per-turn=0.2in division=0.001in")
                        .answers())
                .contains(new Answer.Count("turns", 7))
                .anySatisfy(answer -> assertThat(answer.name()).isEqualTo("divisions"));
        assertThat(number("dial distance=1.4375in per-turn=0.1in division=0.001in", "divisions"))
                .isEqualTo(37.5);
    }

    @Test
    void plug_is_answered_with_the_question_which_of_the_two_it_means() {
        assertThatThrownBy(() -> answered("drill-depth-for-tap thread=M8 full-thread=16 lead=plug"))
                .hasMessageContaining("which of the two");
    }

    @Test
    void the_speed_is_one_that_the_machine_has() {
        String line = "speed-and-feed material=mild-steel cutter=end-mill diameter=20 width=10 stick-out=50"
                + " machine=knee-mill-r8-9x49";
        double speed = number(line, "speed");
        assertThat(List.of(80, 135, 210, 325, 660, 1115, 1750, 2720)).contains((int) Math.round(speed));
        assertThat(number(line, "seconds-per-turn")).isCloseTo(60 * 5.08 / number(line, "feed"), within(1e-9));
        assertThat(number(line, "largest-depth"))
                .isGreaterThan(number(line.replace("stick-out=50", "stick-out=100"), "largest-depth"));
    }

    @Test
    void the_mean_power_of_milling_is_its_mean_torque_at_the_speed() {
        String line = "milling-load material=mild-steel width=10 depth=2 diameter=20 teeth=4 feed-per-tooth=0.1"
                + " speed=500 direction=climb";
        assertThat(number(line, "mean-power"))
                .isCloseTo(number(line, "mean-torque") * 500 * Math.PI / 30_000, within(1e-9));
        assertThat(number(line.replace("climb", "conventional"), "mean-torque"))
                .isCloseTo(number(line, "mean-torque"), within(1e-9));
        assertThat(number(line.replace("climb", "conventional"), "mean-feed-force"))
                .isNotCloseTo(number(line, "mean-feed-force"), within(1.0));
    }

    @Test
    void a_force_at_half_the_stick_out_bends_the_tip_five_sixteenths_as_much() {
        String line = "tool-deflection force=500 stick-out=100 diameter=20 flute-length=0";
        assertThat(number(line + " reach=50", "deflection"))
                .isCloseTo(number(line, "deflection") * 5 / 16, within(1e-9));
    }

    @Test
    void a_block_that_is_pressed_from_two_sides_slides_at_twice_the_friction(@TempDir Path folder) throws IOException {
        String file = balance(folder, "[0, 0, 0]", "10");
        assertThat(number("hold-balance file=" + file, "factor")).isCloseTo(4, within(0.01));
        assertThat(words("hold-balance file=" + file, "first-to-give")).startsWith("contact ");
    }

    @Test
    void a_balance_file_is_refused_with_every_place_that_is_wrong(@TempDir Path folder) throws IOException {
        String file = balance(folder, "[0, 0]", "\"ten\"");
        assertThatThrownBy(() -> answered("hold-balance file=" + file))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("line 2, column")
                .hasMessageContaining("line 4, column")
                .hasMessageContaining("the text \"ten\"");
    }

    private static String balance(Path folder, String at, String force) throws IOException {
        String text = """
                {"contacts": [
                  {"at": %s, "normal": [1, 0, 0], "friction": 0.2, "preload": 100},
                  {"at": [50, 0, 0], "normal": [-1, 0, 0], "friction": 0.2, "preload": 100}],
                 "loads": [{"at": [25, 0, 0], "force": [0, %s, 0]}]}
                """.formatted(at, force);
        return Files.writeString(folder.resolve("balance.json"), text).toString();
    }
}

package setwright.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.Rounds;
import setwright.plan.BearingBlock;
import setwright.quantity.UnitSystem;
import setwright.shop.Cutter;
import setwright.shop.Shop;

/**
 * Speeds and feeds in mild steel on the knee mill (80, 135, 210, 325, 660, 1115, 1750, 2720 rev/min), worked on paper
 * from the shop's rows.
 */
class SpeedAndFeedFigureTest {
    private static final Shop SHOP = BearingBlock.shop();
    private static final String KNEE = " machine=knee-mill-r8-9x49";

    private static Answered answered(String inputs) {
        Question question = Question.of("speed-and-feed " + inputs);
        return Figures.required(question.figure())
                .ask(question, UnitSystem.METRIC, SHOP)
                .answered();
    }

    private static double number(String inputs, String name) {
        return answered(inputs).answers().stream()
                .filter(answer -> answer.name().equals(name))
                .map(Answer.Number.class::cast)
                .findFirst()
                .orElseThrow()
                .inUnit();
    }

    private static String governing(String inputs) {
        return answered(inputs).answers().stream()
                .filter(Answer.Words.class::isInstance)
                .map(answer -> ((Answer.Words) answer).words())
                .findFirst()
                .orElseThrow();
    }

    /**
     * <pre>
     * drill 10          24.384 m/min: 776 rev/min, 660     f = 0.1016 + 3.65 / 6.35 · 0.0762 = 0.1454; 95.96
     * end mill 20       25 m/min: 398, 325                 325 · 4 · 0.075 = 97.5
     *   5 wide          chip at a quarter 0.866            97.5 / 0.866 = 112.58
     * reamer 12         12.192 m/min: 323, 325             325 · (0.2032 + 5.65 / 6.35 · 0.1524) = 110.1
     * tap M8            9.144 m/min: 364, 325              325 · 1.25 = 406.25
     * face mill 63      100 m/min: 505, 660 (1.31 over)    660 · 5 · (0.1 + 13 / 30 · 0.02) = 358.6
     * fly cutter 75     100 m/min: 424, 325                325 · 1 · 0.1167 · 0.75 = 28.44
     * countersink 10.4  12.192 m/min: 373, 325             325 · (0.0508 + 4.05 / 6.35 · 0.0381) = 24.41
     * </pre>
     */
    @ParameterizedTest
    @CsvSource({
        "cutter=drill diameter=10, 660, 95.96",
        "cutter=end-mill diameter=20 width=10, 325, 97.5",
        "cutter=end-mill diameter=20 width=5, 325, 112.58",
        "cutter=reamer diameter=12, 325, 110.1",
        "cutter=tap diameter=8, 325, 406.25",
        "cutter=face-mill tool=carbide diameter=63 teeth=5 width=40, 660, 358.6",
        "cutter=fly-cutter tool=carbide diameter=75, 325, 28.44",
        "cutter=countersink diameter=10.4, 325, 24.41"
    })
    void speed_and_feed_are_those_worked_by_hand(String inputs, double speed, double feed) {
        String line = "material=mild-steel " + inputs + KNEE;
        assertThat(number(line, "speed")).isCloseTo(speed, within(1e-6));
        assertThat(number(line, "feed")).isCloseTo(feed, within(0.001 * feed));
    }

    /**
     * Face mill 63 with 5 edges, 40 wide at 358.6 mm/min, on 2 hp · 0.75 = 1.1186 kW.
     *
     * <pre>
     * arc    φ  = arccos(1 - 80 / 63)               = 105.66° = 1.844 rad
     * chip   hm = 2 · 0.10867 · (40 / 63) / 1.844   = 0.0748 mm
     * force  kc = 1350 · 0.0748^-0.21               = 2326 N/mm²
     * power  P  = 40 · 358.6 · 2326 / 60e6          = 0.556 kW a millimetre of depth
     * depth  1.1186 / 0.556                         = 2.01 mm; the power of the mean chip lies a little high
     * </pre>
     */
    @Test
    void the_largest_depth_of_a_face_mill_is_that_at_which_the_power_is_used_up() {
        String line = "material=mild-steel cutter=face-mill tool=carbide diameter=63 teeth=5 width=40" + KNEE;
        assertThat(governing(line)).isEqualTo("spindle power");
        assertThat(number(line, "largest-depth")).isBetween(2.01, 2.09);
    }

    @Test
    void every_form_of_cutter_is_answered() {
        for (Cutter.Form form : Cutter.Form.values()) {
            String line = "material=mild-steel diameter=20 cutter="
                    + form.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
            assertThat(number(line, "speed")).as(line).isGreaterThan(0);
            assertThat(number(line, "feed")).as(line).isGreaterThan(0);
        }
    }

    @Test
    void a_longer_stick_out_never_allows_more_depth() {
        Rounds.each(73, (random, round) -> {
            double out = 30 + 60 * random.nextDouble();
            String line = "material=mild-steel cutter=end-mill diameter=16 width=" + (2 + 14 * random.nextDouble())
                    + KNEE + " stick-out=";
            assertThat(number(line + (out + 5 + 30 * random.nextDouble()), "largest-depth"))
                    .as(line + out)
                    .isLessThanOrEqualTo(number(line + out, "largest-depth") * 1.001 + 0.001);
        });
    }
}

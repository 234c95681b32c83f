package setwright.location.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.Rounds;
import setwright.quantity.CsvRows;
import setwright.quantity.gear.GearSizes;

class GearsTest {
    /** The printed No. 8, 12 to 14, overlaps No. 7; the table has it as 12 to 13. */
    @Test
    void every_count_of_every_range_has_the_cutter_of_the_table() {
        for (CsvRows.Row row : CsvRows.beside(GearsTest.class, "gear-cutter-numbers.csv")) {
            int to = row.text("teeth_to").equals("rack") ? 1000 : (int) row.number("teeth_to");
            for (int teeth = (int) row.number("teeth_from"); teeth <= to; teeth++) {
                assertThat(number(row.text("system"), teeth)).as("%s", teeth).isEqualTo(row.number("cutter"));
            }
        }
        assertThatThrownBy(() -> InvoluteCutters.number(11, InvoluteCutters.Numbering.MODULE))
                .hasMessageContaining("begin at 12");
    }

    /** Printed as {@code 2.157/P}, {@code 2.200/P + 0.002 in} or {@code 2.25 m}; 24 teeth an inch is fine, 10 is coarse. */
    @Test
    void whole_depths_are_those_of_the_printed_proportions() {
        for (CsvRows.Row row : CsvRows.beside(GearsTest.class, "gear-proportions.csv")) {
            String system = row.text("system");
            String printed = row.text("whole_depth");
            double pitch = system.contains("fine") ? 24 : 10;
            double module = 25.4 / pitch;
            boolean byModule = system.startsWith("module");
            double angle = system.startsWith("14.5") || printed.startsWith("2.157") ? 14.5 : 20;
            double factor = Double.parseDouble(printed.split("[/ ]")[0]);
            double more = printed.contains("+ 0.002 in") ? 0.002 * 25.4 : 0;

            assertThat(GearSizes.depth(Math.toRadians(angle), byModule ? 0 : pitch)
                            .kernel()
                            .applyAsDouble(new double[] {module}))
                    .as(system)
                    .isCloseTo(factor * module + more, within(1e-9));
            assertThat(row.text("outside_diameter")).as(system).contains("(N+2)");
        }
    }

    private static double number(String system, int teeth) {
        return switch (system) {
            case "DP" -> InvoluteCutters.number(teeth, InvoluteCutters.Numbering.DIAMETRAL_PITCH);
            case "module" -> InvoluteCutters.number(teeth, InvoluteCutters.Numbering.MODULE);
            default ->
                InvoluteCutters.half(teeth, InvoluteCutters.Numbering.DIAMETRAL_PITCH)
                        .orElse(Double.NaN);
        };
    }

    /** Span tables for 20 degrees and module 1, from memory; pins of 1.728 in for 1 diametral pitch, from memory. */
    @ParameterizedTest
    @CsvSource({"20, 3, 7.6604", "30, 4, 10.7526", "25, 3, 7.7305"})
    void a_span_is_that_of_the_tables(int teeth, int spanned, double span) {
        assertThat(ToothThickness.spanTeeth(teeth, Math.toRadians(20))).isEqualTo(spanned);
        assertThat(ToothThickness.span(1, Math.toRadians(20), spanned, teeth)).isCloseTo(span, within(0.00006));
    }

    @ParameterizedTest
    @CsvSource({"6, 14.5, 8.2846", "6, 17.5, 8.2927", "6, 20, 8.3032"})
    void over_pins_is_that_of_the_tables(int teeth, double pressure, double over) {
        assertThat(ToothThickness.overPins(1, teeth, Math.toRadians(pressure), 1.728))
                .isCloseTo(over, within(0.0001));
    }

    /** The pin is laid into the space by stepping along the flank: its middle is one radius off the nearest point of it. */
    @Test
    void a_pin_touches_the_flank_that_it_is_laid_on() {
        Rounds.each(21, (random, round) -> {
            int teeth = random.nextInt(12, 80);
            double pressure = Math.toRadians(random.nextDouble(14.5, 25));
            double pin = random.nextDouble(1.6, 1.9);
            double over = ToothThickness.overPins(1, teeth, pressure, pin);
            double across = (over - pin) / (teeth % 2 == 0 ? 1 : Math.cos(Math.PI / (2 * teeth)));
            assertThat(toFlank(teeth, pressure, across / 2)).isCloseTo(pin / 2, within(1e-6));
        });
    }

    /** Distance of a point in the middle of a space to the flank beside it. */
    private static double toFlank(int teeth, double pressure, double radius) {
        double base = teeth * Math.cos(pressure) / 2;
        double half = Math.PI / (2 * teeth) - (Math.tan(pressure) - pressure);
        double least = Double.POSITIVE_INFINITY;
        for (double roll = 0; roll < 1.2; roll += 0.00002) {
            double r = base * Math.hypot(1, roll);
            double angle = half + roll - Math.atan(roll);
            least = Math.min(least, Math.hypot(r * Math.cos(angle) - radius, r * Math.sin(angle)));
        }
        return least;
    }

    @Test
    void the_depth_follows_the_system_of_the_cutter() {
        assertThat(GearSizes.depth(Math.toRadians(14.5), 8)).isSameAs(GearSizes.DEPTH_14_5);
        assertThat(GearSizes.depth(Math.toRadians(20), 8)).isSameAs(GearSizes.DEPTH_20);
        assertThat(GearSizes.depth(Math.toRadians(20), 20)).isSameAs(GearSizes.DEPTH_FINE);
        assertThat(GearSizes.depth(Math.toRadians(20), 0)).isSameAs(GearSizes.DEPTH_20);
    }
}

package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.Rounds;
import setwright.quantity.Unit;

/** Speeds, feeds, chips, unit power, tool life and surface. */
class SpeedAndFeedTest {
    @Test
    void speed_and_feed_lead_back_to_what_they_were_worked_out_from() {
        Rounds.each(11, (random, round) -> {
            double diameter = random.nextDouble(1, 200);
            double speed = random.nextDouble(10, 5000);
            int teeth = 1 + random.nextInt(12);
            double perTooth = random.nextDouble(0.005, 0.5);

            double turns = SpeedAndFeed.spindleSpeed(speed, diameter);
            double feed = SpeedAndFeed.tableFeed(turns, teeth, perTooth);

            assertThat(SpeedAndFeed.cuttingSpeed(turns, diameter)).isCloseTo(speed, withinPercentage(1e-9));
            assertThat(SpeedAndFeed.feedPerTooth(feed, turns, teeth)).isCloseTo(perTooth, withinPercentage(1e-9));
        });
    }

    @Test
    void a_handle_of_five_millimetres_a_turn_at_120_mm_a_minute_takes_two_and_a_half_seconds() {
        assertThat(SpeedAndFeed.cuttingTime(5, Unit.MM_PER_MIN.toInside(120))).isCloseTo(2.5, within(1e-12));
    }

    @Test
    void the_approach_never_passes_half_the_diameter() {
        assertThat(SpeedAndFeed.approach(25, 50)).isCloseTo(25, within(1e-12));
        assertThat(SpeedAndFeed.approach(50, 50)).isCloseTo(25, within(1e-12));
        assertThat(SpeedAndFeed.approach(3, 50)).isCloseTo(Math.sqrt(25 * 25 - 22 * 22), within(1e-12));
    }

    @Test
    void power_is_torque_by_speed_whichever_way_it_is_asked() {
        Rounds.each(12, (random, round) -> {
            double torque = random.nextDouble(10, 1e6);
            double speed = random.nextDouble(1, 1000);
            double radius = random.nextDouble(1, 100);

            double power = CuttingPower.power(torque, speed);

            assertThat(CuttingPower.torque(power, speed)).isCloseTo(torque, withinPercentage(1e-9));
            assertThat(CuttingPower.tangentialForce(power, speed * radius))
                    .isCloseTo(torque / radius, withinPercentage(1e-9));
        });
    }

    @Test
    void the_largest_and_the_mean_chip_are_those_of_a_tooth_on_its_way() {
        Rounds.each(13, (random, round) -> {
            double diameter = random.nextDouble(2, 100);
            double width = diameter * random.nextDouble(0.005, 1);
            double feed = random.nextDouble(0.01, 0.5);
            double exit = Math.acos(1 - 2 * width / diameter);
            int steps = 4000;
            double sum = 0;
            double largest = 0;
            for (int i = 0; i < steps; i++) {
                double chip = feed * Math.sin((i + 0.5) * exit / steps);
                sum += chip / steps;
                largest = Math.max(largest, chip);
            }

            assertThat(ChipThickness.mean(feed, width, diameter)).isCloseTo(sum, withinPercentage(0.001));
            assertThat(ChipThickness.largest(feed, width, diameter)).isCloseTo(largest, withinPercentage(0.05));
            double full = ChipThickness.feedForFullChip(feed, width, diameter);
            assertThat(ChipThickness.largest(full, width, diameter)).isCloseTo(feed, withinPercentage(1e-9));
            assertThat(full).isGreaterThanOrEqualTo(feed);
        });
    }

    @Test
    void the_root_rule_of_the_catalogues_is_a_little_high_at_a_tenth_of_the_diameter() {
        // fz √(ae / D) = 0.03162 mm against 0.03108 mm: general catalogue 2018 p.551, milling catalogue p.289.
        double byRoot = 0.1 * Math.sqrt(1.0 / 10);

        assertThat(byRoot).isCloseTo(0.03162, withinPercentage(0.1));
        assertThat(byRoot / ChipThickness.mean(0.1, 1, 10)).isCloseTo(1.017, within(0.001));
    }

    @Test
    void the_rule_for_centred_face_cuts_is_half_too_high_for_a_side_cut_of_half_the_diameter() {
        assertThat(ChipThickness.meanCentred(0.1, 10, 20)).isCloseTo(0.0955, withinPercentage(0.1));
        assertThat(ChipThickness.mean(0.1, 10, 20)).isCloseTo(0.0637, withinPercentage(0.1));
    }

    static List<CheckRow> unitPowers() {
        return CheckRow.of(SpeedAndFeedTest.class, "unit-power.csv");
    }

    @ParameterizedTest
    @MethodSource("unitPowers")
    void unit_power_in_inches_is_unit_power_in_metric(CheckRow row) {
        double inside = Unit.HP_MIN_PER_IN3.toInside(row.number("inch"));

        assertThat(Unit.KW_S_PER_CM3.fromInside(inside)).isCloseTo(row.number("metric"), within(0.0055));
    }

    @Test
    void unit_power_with_its_feed_factor_is_a_specific_force_with_the_exponent_of_one_fifth() {
        Rounds.each(14, (random, round) -> {
            double feed = random.nextDouble(0.02, 1);
            double unitPower = random.nextDouble(300, 5000);
            var material = new Kienzle(unitPower * Math.pow(0.3, 0.2), 0.2);

            double power = UnitPower.atCutter(new UnitPower.Cut(unitPower, 1000, UnitPower.feedFactor(feed), 1));

            assertThat(power)
                    .isCloseTo(CuttingPower.powerOfRemoval(1000, material.specificForce(feed)), withinPercentage(1e-9));
        });
    }

    @Test
    void a_life_leads_back_to_its_speed_and_two_tests_to_their_law() {
        Rounds.each(15, (random, round) -> {
            double exponent = random.nextDouble(0.1, 0.5);
            double constant = random.nextDouble(500, 5000);
            double speed = constant * random.nextDouble(0.2, 0.9);
            double slower = speed * 0.7;
            double life = ToolLife.life(speed, exponent, constant);
            double longer = ToolLife.life(slower, exponent, constant);

            assertThat(ToolLife.speedForLife(life, exponent, constant)).isCloseTo(speed, withinPercentage(1e-6));
            assertThat(ToolLife.exponent(speed, life, slower, longer)).isCloseTo(exponent, withinPercentage(1e-6));
            assertThat(ToolLife.constant(speed, life, exponent)).isCloseTo(constant, withinPercentage(1e-6));
            assertThat(ToolLife.life(constant, exponent, constant)).isEqualTo(60);
        });
    }

    @Test
    void small_cusps_are_the_square_of_the_spacing_over_four_diameters() {
        assertThat(Surface.cusp(10, 0.1)).isCloseTo(0.01 / 40, withinPercentage(0.01));
        assertThat(Surface.cusp(10, 10)).isEqualTo(5);
    }

    @Test
    void a_quarter_of_peak_to_valley_stands_close_to_the_exact_mean_of_a_parabola() {
        // 0.032 f² / r, from memory.
        double mean = Surface.meanRoughness(Surface.peakToValley(0.2, 0.8));

        assertThat(mean).isCloseTo(0.032 * 0.2 * 0.2 / 0.8, withinPercentage(3));
    }
}

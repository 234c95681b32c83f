package setwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.quantity.Band;
import setwright.shop.Tap;

/** Tapping and reaming. */
class HolesTest {
    private static final double BEVEL = Math.toRadians(45);

    @Test
    void the_two_tapping_formulas_agree_on_an_m8_in_c45_each_with_its_own_set() {
        // Computed from both makers' formulas: 3.94 and 4.06 N·m, 3 % apart.
        double byPitch = Tapping.torque(2600, 1.25, 8);
        double byDepth = Tapping.torqueByDepth(Math.toRadians(30), 3900 * 1.35, 8, 6.8);

        assertThat(byPitch).isCloseTo(4060, withinPercentage(0.5));
        assertThat(byDepth).isCloseTo(byPitch, withinPercentage(4));
    }

    @Test
    void a_tap_that_forms_takes_more_and_one_that_clears_its_chips_takes_less_than_a_straight_one() {
        assertThat(Tapping.kindFactor(Tap.Flute.STRAIGHT)).isEqualTo(new Band(1, 1, 1));
        assertThat(Tapping.kindFactor(Tap.Flute.FORM).low())
                .isGreaterThan(Tapping.kindFactor(Tap.Flute.STRAIGHT).high());
        assertThat(Tapping.kindFactor(Tap.Flute.SPIRAL_POINT).high())
                .isLessThan(Tapping.kindFactor(Tap.Flute.SPIRAL_FLUTE).low());
    }

    @Test
    void a_reamer_does_the_work_that_its_ring_asks_for() {
        Rounds.each(41, (random, round) -> {
            double diameter = random.nextDouble(3, 30);
            double hole = diameter - random.nextDouble(0.1, 0.5);
            double feed = random.nextDouble(0.1, 0.6);
            double speed = random.nextDouble(2, 60);
            var reamer = new Reaming.Reamer(diameter, 4 + 2 * random.nextInt(3), BEVEL);
            var material = MillingForceTest.anyMaterial(random);
            double ring = Math.PI / 4 * (diameter * diameter - hole * hole);
            double rate = ring * SpeedAndFeed.tableFeed(speed, 1, feed);
            double kc = material.specificForce(feed / reamer.teeth() / Math.sqrt(2));

            double power = CuttingPower.power(Reaming.torque(reamer, hole, feed, material), speed);

            assertThat(power).isCloseTo(CuttingPower.powerOfRemoval(rate, kc), withinPercentage(1e-6));
        });
    }

    @Test
    void the_stock_for_a_reamer_is_the_row_of_the_chart() {
        // Reamer-maker's chart: 0.281 to 0.880 in takes 0.010 to 0.016 in on the diameter.
        assertThat(Reaming.stock(10).low()).isCloseTo(0.254, within(1e-9));
        assertThat(Reaming.stock(10).high()).isCloseTo(0.4064, within(1e-9));
        assertThat(Reaming.stock(3).high()).isCloseTo(0.254, within(1e-9));
        assertThat(Reaming.stock(6).low()).isCloseTo(0.2032, within(1e-9));
        assertThat(Reaming.stock(25).low()).isCloseTo(0.381, within(1e-9));
    }

    @Test
    void reaming_speed_runs_from_a_third_of_the_drills_to_two_thirds() {
        assertThat(Reaming.SPEED_TO_DRILL.low()).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(Reaming.SPEED_TO_DRILL.high()).isCloseTo(2 / 3.0, within(1e-12));
    }
}

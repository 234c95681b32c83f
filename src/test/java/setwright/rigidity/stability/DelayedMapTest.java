package setwright.rigidity.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.cutting.Direction;
import setwright.cutting.Engagement;

class DelayedMapTest {
    private static final double BENCHMARK_SPEED = 5000 * Math.PI / 30;

    @Test
    void the_reference_with_its_whole_matrix_gives_the_multipliers_that_are_remembered() {
        var dense = new DenseSemiDiscretisation(
                Examples.benchmark(1), Examples.BENCHMARK, Examples.BENCHMARK_RIGID, BENCHMARK_SPEED, 200);

        assertThat(dense.growth(0.2)).isCloseTo(0.8192, withinPercentage(0.3));
        assertThat(dense.growth(0.5)).isCloseTo(1.0726, withinPercentage(0.3));
        assertThat(dense.growth(0.7)).isCloseTo(1.2196, withinPercentage(0.3));
        assertThat(dense.growth(1.0)).isCloseTo(1.4040, withinPercentage(0.3));
    }

    @Test
    void the_map_grows_as_the_reference_with_its_whole_matrix_does() {
        Rounds.each(611, Rounds.count(20), (random, round) -> {
            Case any = Case.any(random);

            double dense =
                    DenseSemiDiscretisation.of(any.cut, any.x, any.y, any.speed).growth(any.depth);

            assertThat(any.map().growth()).as("%s", any).isCloseTo(dense, withinPercentage(1));
        });
    }

    @Test
    void the_depths_of_the_benchmark_lie_on_the_border_of_the_reference() {
        for (double turns : new double[] {10000, 18000, 25000}) {
            for (double width : new double[] {1, 0.05}) {
                double speed = turns * Math.PI / 30;
                var cut = Examples.benchmark(width);
                double depth = new QuietDepth(cut, Examples.BENCHMARK, Examples.BENCHMARK_RIGID).at(speed, 20);
                var dense = DenseSemiDiscretisation.of(cut, Examples.BENCHMARK, Examples.BENCHMARK_RIGID, speed);

                assertThat(dense.growth(0.985 * depth))
                        .as("%s %s", turns, width)
                        .isLessThan(1);
                assertThat(dense.growth(1.015 * depth))
                        .as("%s %s", turns, width)
                        .isGreaterThan(1);
            }
        }
    }

    @Test
    void a_tip_that_is_followed_in_time_rings_up_or_dies_out_as_the_map_says() {
        int[] agreed = new int[1];
        Rounds.each(612, 50, (random, round) -> {
            Case any = Case.any(random);
            double said = any.map().growth();
            double seen = new RungUp(any.cut, any.x, any.y, any.speed, any.depth).growth();

            if (said > 1 == seen > 1) {
                agreed[0]++;
            } else {
                assertThat(said).as("a border case: %s, seen %s", any, seen).isCloseTo(1, within(0.01));
            }
        });
        assertThat(agreed[0]).as("of 50").isGreaterThanOrEqualTo(48);
    }

    @Test
    void without_depth_the_tip_rings_out_as_its_own_damping_lets_it() {
        var cut = Examples.benchmark(1);
        Mode mode = Examples.BENCHMARK;

        double growth = new DelayedMap(cut, mode, mode, BENCHMARK_SPEED, 1e-9).growth();

        double decay = Math.exp(-mode.damping() * mode.frequency() * cut.period(BENCHMARK_SPEED));
        assertThat(growth).isCloseTo(decay, withinPercentage(0.01));
    }

    @Test
    void twice_as_fine_steps_would_change_nothing_that_counts() {
        Rounds.each(613, Rounds.count(10), (random, round) -> {
            Case any = Case.any(random);
            var dense = DenseSemiDiscretisation.of(any.cut, any.x, any.y, any.speed);
            int twice = 2 * dense.intervals();
            double rough = dense.growth(any.depth);
            if (twice < 300) {
                double fine = new DenseSemiDiscretisation(any.cut, any.x, any.y, any.speed, twice).growth(any.depth);
                assertThat(any.map().growth())
                        .as("the map lies where the reference tends to: %s", any)
                        .isCloseTo(fine + (fine - rough) / 3, withinPercentage(0.4));
            }
        });
    }

    /** Any cut of a few waves between teeth, near its border. */
    private record Case(ToothCut cut, Mode x, Mode y, double speed, double depth) {
        static Case any(RandomGenerator random) {
            Mode x = mode(random);
            Mode y = mode(random);
            double width = random.nextBoolean() ? random.nextDouble(0.03, 0.12) : random.nextDouble(0.12, 0.999);
            Direction direction = random.nextBoolean() ? Direction.CLIMB : Direction.CONVENTIONAL;
            int teeth = random.nextInt(1, 5);
            var cut = new ToothCut(teeth, Engagement.of(direction, width, 1), 1500, random.nextDouble(0.1, 0.5));
            double waves = random.nextDouble(0.4, 4);
            double speed = x.frequency() / (waves * teeth);
            double depth = ZeroOrder.of(cut, x, y).depthAt(speed);
            return new Case(cut, x, y, speed, Math.min(depth, 100) * random.nextDouble(0.5, 1.6));
        }

        private static Mode mode(RandomGenerator random) {
            return Mode.ofHertz(
                    random.nextDouble(300, 1500), random.nextDouble(0.01, 0.06), random.nextDouble(1000, 20000));
        }

        DelayedMap map() {
            return new DelayedMap(cut, x, y, speed, depth);
        }
    }
}

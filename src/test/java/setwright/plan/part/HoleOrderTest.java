package setwright.plan.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.geometry.plane.Point2;

class HoleOrderTest {
    private static double length(List<Point2> places) {
        double sum = 0;
        for (int i = 1; i < places.size(); i++) {
            sum += places.get(i).distance(places.get(i - 1));
        }
        return sum;
    }

    @Test
    void random_holes_are_gone_through_once_each_and_never_further_than_as_written() {
        Rounds.each(71, (random, round) -> {
            List<Point2> places = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(30); i++) {
                places.add(new Point2(random.nextDouble(200), random.nextDouble(100)));
            }
            List<Integer> order = HoleOrder.of(places);
            assertThat(order)
                    .containsExactlyInAnyOrderElementsOf(
                            IntStream.range(0, places.size()).boxed().toList());
            assertThat(order.get(0)).isZero();
            assertThat(length(order.stream().map(places::get).toList())).isLessThanOrEqualTo(length(places) + 1e-9);
            assertThat(HoleOrder.of(places)).isEqualTo(order);
        });
    }

    /** All orders of seven holes, tried: the way found is a tenth longer at most, and mostly the shortest. */
    @Test
    void of_seven_holes_the_way_is_mostly_the_shortest_there_is() {
        int[] shortest = {0, 0};
        Rounds.each(72, (random, round) -> {
            List<Point2> places = new ArrayList<>();
            for (int i = 0; i < 7; i++) {
                places.add(new Point2(random.nextDouble(200), random.nextDouble(100)));
            }
            double best = best(places, places.get(0), new ArrayList<>(places.subList(1, 7)));
            double found = length(HoleOrder.of(places).stream().map(places::get).toList());
            assertThat(found).isGreaterThanOrEqualTo(best - 1e-9).isLessThan(1.35 * best);
            shortest[0] += found < best + 1e-6 ? 1 : 0;
            shortest[1]++;
        });
        assertThat(shortest[0]).isGreaterThan(shortest[1] / 2);
    }

    private static double best(List<Point2> all, Point2 from, List<Point2> left) {
        if (left.isEmpty()) {
            return 0;
        }
        double best = Double.POSITIVE_INFINITY;
        for (Point2 next : List.copyOf(left)) {
            List<Point2> rest = new ArrayList<>(left);
            rest.remove(next);
            best = Math.min(best, from.distance(next) + best(all, next, rest));
        }
        return best;
    }

    @Test
    void rows_that_are_written_all_from_the_left_are_gone_to_and_fro() {
        List<Point2> rows = List.of(
                new Point2(0, 0),
                new Point2(10, 0),
                new Point2(20, 0),
                new Point2(0, 30),
                new Point2(10, 30),
                new Point2(20, 30));

        assertThat(HoleOrder.of(rows)).containsExactly(0, 1, 2, 5, 4, 3);
    }
}

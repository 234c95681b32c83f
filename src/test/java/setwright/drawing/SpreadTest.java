package setwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

class SpreadTest {
    @Test
    void things_that_stand_apart_stay_where_they_are() {
        assertThat(Spread.apart(List.of(0.0, 20.0, 45.0), 15)).containsExactly(0.0, 20.0, 45.0);
    }

    @Test
    void two_at_one_place_move_half_the_way_each() {
        assertThat(Spread.apart(List.of(10.0, 10.0), 6)).containsExactly(7.0, 13.0);
    }

    @Test
    void three_that_are_close_keep_their_middle() {
        List<Double> apart = Spread.apart(List.of(9.0, 10.0, 11.0), 5);

        assertThat(apart.get(0)).isCloseTo(5, within(1e-12));
        assertThat(apart.get(1)).isCloseTo(10, within(1e-12));
        assertThat(apart.get(2)).isCloseTo(15, within(1e-12));
    }

    @Test
    void none_leaves_the_space_while_there_is_room_for_all() {
        List<Double> apart = Spread.apart(List.of(1.0, 1.0, 99.0, 99.0, 99.0), 10, 0, 100);

        assertThat(apart).containsExactly(0.0, 10.0, 80.0, 90.0, 100.0);
    }

    @Test
    void neighbours_never_stand_closer_than_asked() {
        Rounds.each(7, (random, round) -> {
            List<Double> wanted = random.doubles(1 + random.nextInt(12), 0, 100)
                    .sorted()
                    .boxed()
                    .toList();
            List<Double> apart = Spread.apart(wanted, 8, 0, 100);
            for (int i = 1; i < apart.size(); i++) {
                assertThat(apart.get(i) - apart.get(i - 1)).isGreaterThanOrEqualTo(8 - 1e-9);
            }
        });
    }

    /** At a least sum of squares no small push of one thing, within what is asked, makes the sum less. */
    @Test
    void no_other_way_moves_them_less() {
        Rounds.each(8, (random, round) -> {
            List<Double> wanted = random.doubles(6, 0, 30).sorted().boxed().toList();
            List<Double> apart = Spread.apart(wanted, 5);
            List<Double> other = new java.util.ArrayList<>();
            double at = Double.NEGATIVE_INFINITY;
            for (double place : apart) {
                at = Math.max(at + 5, place + random.nextDouble(-1, 1));
                other.add(at);
            }
            assertThat(moved(wanted, apart)).isLessThanOrEqualTo(moved(wanted, other) + 1e-9);
        });
    }

    private static double moved(List<Double> wanted, List<Double> placed) {
        double sum = 0;
        for (int i = 0; i < wanted.size(); i++) {
            double by = placed.get(i) - wanted.get(i);
            sum += by * by;
        }
        return sum;
    }
}

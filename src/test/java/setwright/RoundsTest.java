package setwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RoundsTest {
    @Test
    void the_same_seed_draws_the_same_numbers_and_each_round_draws_others() {
        var first = draw(7);

        assertThat(draw(7)).isEqualTo(first);
        assertThat(draw(8)).isNotEqualTo(first);
        assertThat(first).hasSize(20).doesNotHaveDuplicates();
    }

    @Test
    void a_failure_names_seed_and_round() {
        assertThatThrownBy(() -> Rounds.each(7, 20, (random, i) -> assertThat(i).isLessThan(13)))
                .isInstanceOf(AssertionError.class)
                .hasMessageStartingWith("seed 7, round 13: ")
                .hasCauseInstanceOf(AssertionError.class);
    }

    @Test
    void one_round_is_played_alone_as_among_the_others() {
        List<Double> alone = new ArrayList<>();
        Rounds.play(7, 13, (random, i) -> alone.add(random.nextDouble()));

        assertThat(alone).containsExactly(draw(7).get(13));
    }

    private static List<Double> draw(long seed) {
        List<Double> drawn = new ArrayList<>();
        Rounds.each(seed, 20, (random, i) -> drawn.add(random.nextDouble()));
        return drawn;
    }
}

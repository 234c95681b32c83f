package setwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import setwright.Rounds;

class FoldsTest {
    private static final Folds FOLDS = Folds.between(10, 60);

    @Test
    void what_is_left_out_takes_only_a_gap() {
        assertThat(FOLDS.of(10)).isEqualTo(10);
        assertThat(FOLDS.of(60)).isCloseTo(10 + Folds.GAP, within(1e-12));
        assertThat(FOLDS.of(100) - FOLDS.of(60)).isCloseTo(40, within(1e-12));
    }

    @Test
    void a_short_length_is_not_broken() {
        assertThat(Folds.between(10, 20)).isEqualTo(Folds.NONE);
    }

    @Test
    void a_span_falls_into_the_pieces_that_are_drawn() {
        assertThat(FOLDS.pieces(new Span(0, 100))).containsExactly(new Span(0, 10), new Span(60, 100));
        assertThat(FOLDS.pieces(new Span(70, 100))).containsExactly(new Span(70, 100));
        assertThat(FOLDS.pieces(new Span(20, 50))).isEmpty();
    }

    @Test
    void higher_is_never_drawn_lower() {
        Rounds.each(3, (random, round) -> {
            double low = random.nextDouble(-20, 120);
            double high = low + random.nextDouble(0, 50);
            assertThat(FOLDS.of(high)).isGreaterThanOrEqualTo(FOLDS.of(low));
        });
    }
}

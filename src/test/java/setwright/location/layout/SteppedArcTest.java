package setwright.location.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.location.Place;

class SteppedArcTest {
    /** No place of the cutter ever cuts into the arc, and what is left is highest half way, as walked over point by point. */
    @Test
    void the_ridge_is_what_is_left_between_two_places_and_no_place_cuts_too_deep() {
        Rounds.each(83, (random, round) -> {
            boolean outside = random.nextBoolean();
            double radius = random.nextDouble(5, 60);
            double cutter = outside ? random.nextDouble(4, 30) : random.nextDouble(0.5, 1.8) * radius;
            int steps = random.nextInt(12, 60);
            double span = random.nextDouble(0.3, 1.6);
            SteppedArc arc = outside
                    ? SteppedArc.outside(radius, cutter, 0.4, span, steps)
                    : SteppedArc.inside(radius, cutter, 0.4, span, steps);
            double highest = 0;
            for (int i = 0; i <= 4000; i++) {
                double left = left(arc, 0.4 + span * i / 4000, outside);
                assertThat(left).isGreaterThan(-1e-9);
                highest = Math.max(highest, left);
            }
            assertThat(arc.ridge())
                    .isGreaterThanOrEqualTo(highest - 1e-9)
                    .isCloseTo(highest, within(1e-3 + highest / 50));
        });
    }

    /** How much material stands over the arc at an angle: the nearest edge of any place of the cutter. */
    private static double left(SteppedArc arc, double angle, boolean outside) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Place place : arc.places()) {
            double along = place.x() * Math.cos(angle) + place.y() * Math.sin(angle);
            double across = -place.x() * Math.sin(angle) + place.y() * Math.cos(angle);
            double square = arc.cutter() * arc.cutter() / 4 - across * across;
            if (square >= 0) {
                double edge = Math.sqrt(square);
                nearest = Math.min(nearest, outside ? along - edge - arc.radius() : arc.radius() - along - edge);
            }
        }
        return nearest;
    }

    @Test
    void first_and_last_place_are_the_ends_of_the_arc() {
        List<Place> places = SteppedArc.outside(10, 12, 0, Math.PI / 2, 9).places();

        assertThat(places).hasSize(10);
        assertThat(places.get(0)).isEqualTo(new Place(16, 0));
        assertThat(places.get(9).y()).isCloseTo(16, within(1e-12));
    }

    @Test
    void too_few_steps_and_too_large_a_cutter_are_refused() {
        assertThatThrownBy(() -> SteppedArc.outside(100, 6, 0, Math.PI / 2, 2).ridge())
                .hasMessageContaining("more steps");
        assertThatThrownBy(() -> SteppedArc.inside(5, 12, 0, Math.PI / 2, 9)).hasMessageContaining("twice the radius");
    }
}

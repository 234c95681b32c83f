package setwright.geometry.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import setwright.Rounds;

class EdgeTest {
    private static final Offset<Double> EXACT = within(1e-9);

    @Test
    void a_quarter_turn_is_as_long_as_a_quarter_of_the_circle() {
        Arc arc = Arc.of(new Point2(3, 4), 10, 0, Math.PI / 2);

        assertThat(arc.length()).isCloseTo(10 * Math.PI / 2, EXACT);
        assertThat(arc.box()).satisfies(box -> {
            assertThat(box.xLow()).isCloseTo(3, EXACT);
            assertThat(box.xHigh()).isCloseTo(13, EXACT);
            assertThat(box.yLow()).isCloseTo(4, EXACT);
            assertThat(box.yHigh()).isCloseTo(14, EXACT);
        });
    }

    @Test
    void the_box_of_an_arc_reaches_beyond_its_ends_where_the_arc_does() {
        Arc overTheTop = Arc.of(Point2.ORIGIN, 5, Math.PI / 4, Math.PI / 2);

        assertThat(overTheTop.box().yHigh()).isCloseTo(5, EXACT);
        assertThat(overTheTop.box().xHigh()).isCloseTo(5 * Math.sqrt(0.5), EXACT);
    }

    @Test
    void the_nearest_place_of_an_arc_is_an_end_where_the_arc_looks_away() {
        Arc right = Arc.of(Point2.ORIGIN, 5, -Math.PI / 2, Math.PI);

        assertThat(right.nearest(new Point2(8, 0)).distance(new Point2(5, 0))).isZero();
        assertThat(right.nearest(new Point2(-8, 1))).isEqualTo(right.to());
        assertThat(right.nearest(new Point2(-8, -1))).isEqualTo(right.from());
    }

    @Test
    void an_arc_needs_a_radius_two_ends_and_one_distance_from_its_centre() {
        Point2 end = new Point2(1, 0);

        assertThatThrownBy(() -> new Arc(end, end, Point2.ORIGIN, true)).hasMessageContaining("two half turns");
        assertThatThrownBy(() -> new Arc(end, new Point2(0, 1.1), Point2.ORIGIN, true))
                .hasMessageContaining("1.1 mm from its centre");
    }

    @Test
    void a_straight_line_past_an_arc_clears_it_by_distance_less_radius() {
        Arc circle = Arc.of(Point2.ORIGIN, 5, 0, Math.PI);

        assertThat(distance(line(-9, 7, 9, 7), circle)).isCloseTo(2, EXACT);
        assertThat(distance(line(-9, 5, 9, 5), circle)).as("tangent").isCloseTo(0, EXACT);
        assertThat(distance(line(-9, 3, 9, 3), circle)).as("through").isCloseTo(0, EXACT);
        assertThat(distance(line(-1, 1, 1, 1), circle)).as("inside").isCloseTo(5 - Math.sqrt(2), EXACT);
        assertThat(distance(line(-9, -2, 9, -2), circle)).as("on the open side").isCloseTo(2, EXACT);
    }

    @Test
    void arcs_inside_and_outside_one_another_clear_by_the_difference_of_their_radii_and_centres() {
        Arc big = Arc.of(Point2.ORIGIN, 10, 0, Math.PI * 1.5);
        Arc concentric = Arc.of(Point2.ORIGIN, 4, 0.3, 1);
        Arc aside = Arc.of(new Point2(3, 0), 2, -1, 2);
        Arc beyond = Arc.of(new Point2(0, 18), 3, Math.PI, Math.PI);

        assertThat(distance(concentric, big)).isCloseTo(6, EXACT);
        assertThat(distance(aside, big)).isCloseTo(10 - 5, EXACT);
        assertThat(distance(beyond, big)).isCloseTo(18 - 10 - 3, EXACT);
    }

    @Test
    void a_line_without_length_is_a_point() {
        Straight point = Straight.point(new Point2(3, 4));

        assertThat(distance(point, line(0, 0, 10, 0))).isCloseTo(4, EXACT);
        assertThat(distance(point, Arc.of(Point2.ORIGIN, 2, 0, 2))).isCloseTo(3, EXACT);
        assertThat(distance(point, point)).isZero();
    }

    @Test
    void no_sample_of_two_edges_is_nearer_than_their_distance_and_some_sample_is_as_near() {
        Rounds.each(17, (random, round) -> {
            Edge a = edge(random);
            Edge b = edge(random);

            Gap gap = Gap.between(a, b);

            double step = Math.max(a.length(), b.length()) / 200;
            assertThat(gap.distance()).isLessThanOrEqualTo(sampled(a, b) + 1e-9);
            assertThat(gap.distance()).isGreaterThanOrEqualTo(sampled(a, b) - step);
            assertThat(gap.on().distance(gap.off())).isCloseTo(gap.distance(), EXACT);
            assertThat(a.nearest(gap.on()).distance(gap.on())).isCloseTo(0, EXACT);
            assertThat(b.nearest(gap.off()).distance(gap.off())).isCloseTo(0, EXACT);
            assertThat(Gap.between(b, a).distance()).isCloseTo(gap.distance(), EXACT);
        });
    }

    @Test
    void a_place_is_found_at_the_fraction_at_which_it_lies() {
        Rounds.each(18, (random, round) -> {
            Edge edge = edge(random);
            double fraction = random.nextDouble();

            assertThat(edge.fraction(edge.at(fraction))).isCloseTo(fraction, within(1e-7));
            assertThat(edge.part(0, fraction).length()).isCloseTo(fraction * edge.length(), within(1e-7));
            assertThat(edge.reversed().at(1 - fraction).distance(edge.at(fraction)))
                    .isCloseTo(0, within(1e-9));
        });
    }

    static Edge edge(RandomGenerator random) {
        Point2 from = point(random);
        if (random.nextInt(3) == 0) {
            return new Straight(from, point(random));
        }
        double sweep = (0.05 + 6.2 * random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
        return Arc.of(from, 0.5 + 12 * random.nextDouble(), 7 * random.nextDouble(), sweep);
    }

    static Point2 point(RandomGenerator random) {
        return new Point2(30 * random.nextDouble() - 15, 30 * random.nextDouble() - 15);
    }

    private static double sampled(Edge a, Edge b) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 200; i++) {
            Point2 p = a.at(i / 200.0);
            for (int k = 0; k <= 200; k++) {
                least = Math.min(least, p.distance(b.at(k / 200.0)));
            }
        }
        return least;
    }

    private static Straight line(double x1, double y1, double x2, double y2) {
        return new Straight(new Point2(x1, y1), new Point2(x2, y2));
    }

    private static double distance(Edge a, Edge b) {
        return Gap.between(a, b).distance();
    }
}

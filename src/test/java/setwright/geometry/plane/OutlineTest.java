package setwright.geometry.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import setwright.Rounds;

class OutlineTest {
    private static final Offset<Double> EXACT = within(1e-9);

    @Test
    void areas_and_centroids_are_those_of_elementary_geometry() {
        Outline rectangle = Outline.rectangle(new Point2(82, 52), new Point2(2, 2));
        Outline circle = Outline.circle(new Point2(7, -3), 6);
        Outline slot = Outline.slot(new Point2(0, 0), new Point2(30, 40), 5);

        assertThat(rectangle.area()).isCloseTo(80 * 50, EXACT);
        assertThat(rectangle.moments().centroid().distance(new Point2(42, 27))).isCloseTo(0, EXACT);
        assertThat(circle.area()).isCloseTo(36 * Math.PI, EXACT);
        assertThat(circle.moments().centroid().distance(new Point2(7, -3))).isCloseTo(0, EXACT);
        assertThat(slot.area()).isCloseTo(50 * 10 + 25 * Math.PI, EXACT);
        assertThat(slot.length()).isCloseTo(2 * 50 + 10 * Math.PI, EXACT);
        assertThat(slot.moments().centroid().distance(new Point2(15, 20))).isCloseTo(0, EXACT);
    }

    @Test
    void the_centroid_of_a_half_disc_is_4r_over_3_pi_from_its_straight_side() {
        Point2 left = new Point2(-6, 0);
        Point2 right = new Point2(6, 0);
        Outline half = new Outline(List.of(new Straight(left, right), new Arc(right, left, Point2.ORIGIN, true)));

        assertThat(half.moments().centroid().y()).isCloseTo(4 * 6 / (3 * Math.PI), EXACT);
        assertThat(half.area()).isCloseTo(18 * Math.PI, EXACT);
    }

    @Test
    void an_arc_that_bulges_inward_takes_its_segment_away() {
        Point2 a = new Point2(-5, 0);
        Point2 b = new Point2(5, 0);
        Outline notched = new Outline(List.of(
                new Arc(a, b, Point2.ORIGIN, false),
                new Straight(b, new Point2(5, -1)),
                new Straight(new Point2(5, -1), new Point2(5, 20)),
                new Straight(new Point2(5, 20), new Point2(-5, 20)),
                new Straight(new Point2(-5, 20), a)));

        assertThat(notched.area()).isCloseTo(200 - 12.5 * Math.PI, EXACT);
        assertThat(notched.contains(new Point2(0, 4.9))).isFalse();
        assertThat(notched.contains(new Point2(0, 5.1))).isTrue();
    }

    @Test
    void which_way_an_outline_runs_changes_nothing() {
        Outline slot = Outline.slot(new Point2(1, 2), new Point2(9, 4), 3);
        List<Edge> backwards = slot.edges().stream().map(Edge::reversed).toList();
        Outline reversed = new Outline(List.of(backwards.get(3), backwards.get(2), backwards.get(1), backwards.get(0)));

        assertThat(reversed.anticlockwise()).isNotEqualTo(slot.anticlockwise());
        assertThat(reversed.area()).isCloseTo(slot.area(), EXACT);
        assertThat(reversed.moments().centroid().distance(slot.moments().centroid()))
                .isCloseTo(0, EXACT);
    }

    @Test
    void what_lies_in_a_slot_is_what_lies_within_its_radius_of_the_middle_line() {
        Rounds.each(3, (random, round) -> {
            Point2 from = EdgeTest.point(random);
            Point2 to = EdgeTest.point(random);
            double radius = 0.5 + 5 * random.nextDouble();
            Outline slot = Outline.slot(from, to, radius);
            for (int i = 0; i < 100; i++) {
                Point2 p = EdgeTest.point(random);
                double distance = new Straight(from, to).nearest(p).distance(p);

                assertThat(slot.contains(p)).isEqualTo(distance < radius);
                assertThat(slot.gap(Straight.point(p)).distance()).isCloseTo(Math.abs(distance - radius), within(1e-9));
            }
        });
    }

    @Test
    void a_corner_at_the_height_of_the_place_asked_for_counts_once() {
        Outline diamond =
                Outline.polygon(List.of(new Point2(0, -5), new Point2(5, 0), new Point2(0, 5), new Point2(-5, 0)));

        assertThat(diamond.contains(new Point2(0, 0))).isTrue();
        assertThat(diamond.contains(new Point2(-6, 0))).isFalse();
        assertThat(Outline.circle(Point2.ORIGIN, 5).contains(new Point2(-4.9, 0)))
                .isTrue();
        assertThat(Outline.circle(Point2.ORIGIN, 5).contains(new Point2(-6, 5))).isFalse();
    }

    @Test
    void turning_moving_and_turning_over_keep_area_and_distances() {
        Rounds.each(4, (random, round) -> {
            Point2 from = EdgeTest.point(random);
            Outline slot = Outline.slot(from, random.nextBoolean() ? from : EdgeTest.point(random), 6);
            Point2 p = EdgeTest.point(random);
            PlanMap over = new PlanMap(1, 0, 0, -1, 3, 4);
            PlanMap map = PlanMap.turn(random.nextInt(2) * random.nextDouble())
                    .then(random.nextBoolean() ? over : PlanMap.shift(5, -2))
                    .then(PlanMap.quarterTurns(random.nextInt(9) - 4));

            Outline mapped = slot.mapped(map);

            assertThat(mapped.area()).isCloseTo(slot.area(), within(1e-9));
            assertThat(mapped.gap(Straight.point(map.of(p))).distance())
                    .isCloseTo(slot.gap(Straight.point(p)).distance(), within(1e-9));
            assertThat(mapped.contains(map.of(p))).isEqualTo(slot.contains(p));
        });
    }

    @Test
    void areas_agree_with_those_of_finely_flattened_polygons_in_jts() {
        Rounds.each(5, (random, round) -> {
            Outline outline = random.nextBoolean()
                    ? Outline.slot(EdgeTest.point(random), EdgeTest.point(random), 1 + 5 * random.nextDouble())
                    : Outline.circle(EdgeTest.point(random), 1 + 9 * random.nextDouble());

            Polygon polygon = flattened(outline);

            assertThat(outline.area()).isCloseTo(polygon.getArea(), within(2e-5 * outline.area()));
            assertThat(outline.moments().centroid().x())
                    .isCloseTo(polygon.getCentroid().getX(), within(1e-4));
            assertThat(outline.moments().centroid().y())
                    .isCloseTo(polygon.getCentroid().getY(), within(1e-4));
        });
    }

    @Test
    void a_needle_has_no_area_but_a_distance() {
        Outline needle = Outline.rectangle(new Point2(0, 0), new Point2(100, 0));

        assertThat(needle.area()).isZero();
        assertThat(needle.gap(Straight.point(new Point2(50, 3))).distance()).isEqualTo(3);
    }

    @Test
    void edges_that_do_not_join_make_no_outline() {
        List<Edge> open = List.of(
                new Straight(new Point2(0, 0), new Point2(1, 0)), new Straight(new Point2(1, 0), new Point2(0, 1)));

        assertThatThrownBy(() -> new Outline(open)).hasMessageContaining("its edges must join");
    }

    /** Every arc in 1,000 chords. */
    static Polygon flattened(Outline outline) {
        List<Coordinate> corners = new ArrayList<>();
        for (Edge edge : outline.edges()) {
            int pieces = edge.kind() == Edge.Kind.ARC ? 1000 : 1;
            for (int i = 0; i < pieces; i++) {
                Point2 p = edge.at((double) i / pieces);
                corners.add(new Coordinate(p.x(), p.y()));
            }
        }
        corners.add(corners.get(0).copy());
        return new GeometryFactory().createPolygon(corners.toArray(new Coordinate[0]));
    }
}

package setwright.geometry.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.random.RandomGenerator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import setwright.Rounds;

class RegionTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Region PLATE = Region.rectangle(new Point2(0, 0), new Point2(80, 50));

    @Test
    void a_place_beside_a_region_is_outside_by_its_distance_and_inside_by_its_depth() {
        assertThat(PLATE.distance(new Point2(84, 53))).isCloseTo(5, EXACT);
        assertThat(PLATE.distance(new Point2(40, 20))).isCloseTo(-20, EXACT);
        assertThat(PLATE.distance(new Point2(80, 20))).isCloseTo(0, EXACT);
    }

    @Test
    void a_place_in_a_hole_is_as_far_from_the_region_as_from_the_rim() {
        Region drilled = PLATE.minus(Region.circle(new Point2(40, 25), 6));

        assertThat(drilled.distance(new Point2(40, 25))).isCloseTo(6, EXACT);
        assertThat(drilled.distance(new Point2(43, 29))).isCloseTo(1, EXACT);
        assertThat(drilled.distance(new Point2(48, 25))).isCloseTo(-2, EXACT);
        assertThat(drilled.area()).isCloseTo(80 * 50 - 36 * Math.PI, EXACT);
    }

    @Test
    void a_path_that_crosses_a_region_reaches_as_deep_as_its_deepest_place() {
        Straight across = new Straight(new Point2(30, -10), new Point2(30, 60));
        Straight along = new Straight(new Point2(-10, 10), new Point2(90, 10));
        Straight corner = new Straight(new Point2(-10, 10), new Point2(10, -10));
        Straight cutCorner = new Straight(new Point2(-10, 12), new Point2(12, -10));

        assertThat(PLATE.gap(across).distance()).isCloseTo(-25, within(1e-6));
        assertThat(PLATE.gap(along).distance()).isCloseTo(-10, within(1e-6));
        assertThat(PLATE.gap(corner).distance()).as("touches the corner").isCloseTo(0, EXACT);
        assertThat(PLATE.gap(cutCorner).distance()).isCloseTo(-1, within(1e-6));
    }

    @Test
    void a_path_that_ends_inside_is_as_deep_as_its_end() {
        Straight in = new Straight(new Point2(-5, 25), new Point2(20, 25));

        assertThat(PLATE.gap(in).distance()).isCloseTo(-20, EXACT);
        assertThat(PLATE.gap(in.reversed()).distance()).isCloseTo(-20, EXACT);
    }

    @Test
    void a_path_along_the_edge_of_a_region_touches_it() {
        Straight edge = new Straight(new Point2(-5, 50), new Point2(90, 50));

        assertThat(PLATE.gap(edge).distance()).isCloseTo(0, EXACT);
    }

    @Test
    void a_round_path_inside_a_bore_keeps_the_difference_of_the_radii() {
        Region ring = Region.circle(Point2.ORIGIN, 40).minus(Region.circle(Point2.ORIGIN, 20));
        Arc round = Arc.of(new Point2(1, 0), 12, 0, 5);

        assertThat(ring.gap(round).distance()).isCloseTo(20 - 13, EXACT);
        assertThat(ring.gap(Arc.of(Point2.ORIGIN, 30, 0, 3)).distance()).isCloseTo(-10, within(1e-6));
    }

    @Test
    void what_does_not_meet_stays_round() {
        Region drilled = PLATE.minus(Region.circle(new Point2(20, 20), 5)).minus(Region.circle(new Point2(60, 20), 5));
        Region reamed = drilled.minus(Region.circle(new Point2(20, 20), 6));
        Region slotted = reamed.minus(Region.rectangle(new Point2(-1, 40), new Point2(81, 60)));

        assertThat(reamed.holes()).hasSize(2);
        assertThat(slotted.holes())
                .hasSize(2)
                .allSatisfy(hole -> assertThat(hole.edges()).allMatch(edge -> edge.kind() == Edge.Kind.ARC));
        assertThat(slotted.area()).isCloseTo(80 * 40 - 36 * Math.PI - 25 * Math.PI, EXACT);
    }

    @Test
    void an_island_left_in_a_pocket_is_part_of_the_region() {
        Region pocket = Region.circle(new Point2(40, 25), 20).minus(Region.circle(new Point2(40, 25), 5));
        Region left = PLATE.minus(pocket);

        assertThat(left.outers()).hasSize(2);
        assertThat(left.contains(new Point2(40, 25))).isTrue();
        assertThat(left.contains(new Point2(50, 25))).isFalse();
        assertThat(left.distance(new Point2(52, 25))).isCloseTo(7, EXACT);
        assertThat(left.minus(Region.circle(new Point2(40, 25), 6)).outers()).hasSize(1);
    }

    @Test
    void a_slot_right_across_leaves_two_pieces() {
        Region left = PLATE.minus(Region.rectangle(new Point2(30, -1), new Point2(40, 51)));

        assertThat(left.outers()).hasSize(2);
        assertThat(left.area()).isCloseTo(70 * 50, EXACT);
        assertThat(left.distance(new Point2(35, 25))).isCloseTo(5, EXACT);
    }

    @Test
    void taking_away_all_of_a_round_region_leaves_nothing() {
        Region bar = Region.circle(new Point2(3, 3), 20);

        assertThat(bar.minus(bar).isEmpty()).isTrue();
        assertThat(bar.minus(Region.circle(new Point2(3, 3), 21)).isEmpty()).isTrue();
        assertThat(PLATE.minus(PLATE).isEmpty()).isTrue();
        assertThat(bar.meet(Region.circle(new Point2(90, 3), 20)).isEmpty()).isTrue();
    }

    @Test
    void two_discs_have_the_lens_in_common_and_what_is_left_is_never_too_small() {
        Rounds.each(6, (random, round) -> {
            double a = 5 + 20 * random.nextDouble();
            double b = 5 + 20 * random.nextDouble();
            double apart = Math.abs(a - b) + (a + b - Math.abs(a - b)) * (0.02 + 0.96 * random.nextDouble());
            Region first = Region.circle(Point2.ORIGIN, a);
            Region second = Region.circle(new Point2(apart, 0), b);
            double lens = lens(a, b, apart);
            double both = Math.PI * (a * a + b * b) - lens;
            double slack = Region.FLATNESS * 2 * Math.PI * (a + b);

            assertThat(first.minus(second).area()).isBetween(Math.PI * a * a - lens, Math.PI * a * a - lens + slack);
            assertThat(first.plus(second).area()).isBetween(both, both + slack);
            assertThat(first.meet(second).area()).isBetween(lens, lens + slack);
        });
    }

    @Test
    void booleans_agree_with_those_of_jts_on_finely_flattened_polygons() {
        Rounds.each(7, (random, round) -> {
            Region region = PLATE;
            Geometry reference = OutlineTest.flattened(PLATE.outers().get(0));
            for (int i = 0; i < 6; i++) {
                Outline cut = outline(random);
                region = region.minus(Region.of(cut));
                reference = reference.difference(OutlineTest.flattened(cut));
            }

            double slack = 2 * Region.FLATNESS * reference.getLength() + 1e-3;
            assertThat(region.area()).isBetween(reference.getArea() - 1e-3, reference.getArea() + slack);
        });
    }

    @Test
    void nothing_left_after_booleans_is_missing_from_the_region() {
        Rounds.each(8, (random, round) -> {
            List<Outline> cuts = List.of(outline(random), outline(random), outline(random));
            Region region = PLATE;
            for (Outline cut : cuts) {
                region = region.minus(Region.of(cut));
            }
            for (int i = 0; i < 200; i++) {
                Point2 p = new Point2(80 * random.nextDouble(), 50 * random.nextDouble());
                boolean gone = cuts.stream().anyMatch(cut -> cut.contains(p));
                double edge = cuts.stream()
                        .mapToDouble(cut -> cut.gap(Straight.point(p)).distance())
                        .min()
                        .orElseThrow();

                if (!gone && edge > 0.02) {
                    assertThat(region.contains(p)).as("left at %s", p).isTrue();
                } else if (gone && edge > 0.02) {
                    assertThat(region.contains(p)).as("gone at %s", p).isFalse();
                }
            }
        });
    }

    private static Outline outline(RandomGenerator random) {
        Point2 a = new Point2(90 * random.nextDouble() - 5, 60 * random.nextDouble() - 5);
        Point2 b = new Point2(90 * random.nextDouble() - 5, 60 * random.nextDouble() - 5);
        return switch (random.nextInt(3)) {
            case 0 -> Outline.rectangle(a, b);
            case 1 -> Outline.circle(a, 1 + 10 * random.nextDouble());
            default -> Outline.slot(a, b, 1 + 6 * random.nextDouble());
        };
    }

    /** What two discs have in common: two circular segments on one chord. */
    private static double lens(double a, double b, double apart) {
        double fromA = (apart * apart + a * a - b * b) / (2 * apart);
        return segment(a, fromA) + segment(b, apart - fromA);
    }

    private static double segment(double radius, double toChord) {
        return radius * radius * Math.acos(toChord / radius)
                - toChord * Math.sqrt(Math.max(0, radius * radius - toChord * toChord));
    }
}

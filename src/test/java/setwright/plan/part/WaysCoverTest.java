package setwright.plan.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Straight;

/** The disc of the cutter along its way against what the way says is gone, counted on a grid of 0.5 mm. */
class WaysCoverTest {
    private static final double GRID = 0.5;

    /** A place within so much of the outline may count either way, mm. */
    private static final double ON_THE_LINE = 0.02;

    @Test
    void random_pockets_are_swept_to_their_walls_and_nothing_beside() {
        Rounds.each(81, (random, round) -> {
            double cutter = pick(random, 4, 16);
            double length = cutter + random.nextDouble(60);
            double width = cutter + random.nextDouble(30);
            double corner = random.nextDouble(Math.min(length, width) / 2);
            boolean climb = random.nextBoolean();
            double step = cutter * (0.3 + random.nextDouble(0.5));
            sweeps(new PocketWay(length, width, corner, cutter, step, climb).milled(), cutter);
        });
    }

    @Test
    void random_slots_of_every_kind_are_swept_to_their_walls_and_nothing_beside() {
        Rounds.each(82, (random, round) -> {
            double cutter = pick(random, 4, 12);
            double width = cutter * (0.8 + random.nextDouble(2.4));
            SlotWay way = new SlotWay(width, cutter, random.nextBoolean());
            sweeps(way.closed(Math.max(width, cutter) + random.nextDouble(40)), cutter);
            double radius = 2 * width + random.nextDouble(20);
            sweeps(way.arc(radius, random.nextDouble(6), 0.3 + random.nextDouble(3)), cutter);
            sweeps(way.arc(radius, 0, 2 * Math.PI), cutter);
            halfOpen(way, width, cutter);
        });
    }

    /** What runs out over the open end is not looked at. */
    private static void halfOpen(SlotWay way, double width, double cutter) {
        sweeps(way.halfOpen(-30 - width, 20), cutter, 20);
    }

    @Test
    void a_disc_that_lies_level_sweeps_what_its_kerf_says() {
        Rounds.each(83, (random, round) -> {
            double radius = 20 + random.nextDouble(40);
            double sunk = radius * (0.1 + random.nextDouble(0.7));
            LevelDisc disc = LevelDisc.of(radius, sunk, sunk / 2);
            sweeps(disc.sunkIn(-5, 15), 2 * radius, Double.POSITIVE_INFINITY, 0);
        });
    }

    private static double pick(RandomGenerator random, int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    private static void sweeps(Milled milled, double cutter) {
        sweeps(milled, cutter, Double.POSITIVE_INFINITY);
    }

    private static void sweeps(Milled milled, double cutter, double beyond) {
        sweeps(milled, cutter, beyond, Double.NEGATIVE_INFINITY);
    }

    /** What lies beyond in x, or before the side in y, is not looked at. */
    private static void sweeps(Milled milled, double cutter, double beyond, double side) {
        List<Edge> way = new ArrayList<>();
        milled.lanes().forEach(lane -> way.addAll(lane.edges()));
        var box = milled.gone().box().grown(cutter);
        for (double x = box.xLow(); x < Math.min(beyond, box.xHigh()); x += GRID) {
            for (double y = Math.max(side, box.yLow()); y < box.yHigh(); y += GRID) {
                Point2 place = new Point2(x, y);
                double edge = milled.gone().distance(place);
                if (Math.abs(edge) < ON_THE_LINE || beyond < Double.POSITIVE_INFINITY && x > beyond - cutter) {
                    continue;
                }
                double near = way.stream()
                        .mapToDouble(one -> one.nearest(place).distance(place))
                        .min()
                        .orElseThrow();
                assertThat(near <= cutter / 2 + 1e-6)
                        .as(
                                "%s is %.3f from the outline and %.3f from the way of the %.1f cutter",
                                place, edge, near, cutter)
                        .isEqualTo(edge < 0);
            }
        }
    }

    @Test
    void a_pocket_much_longer_than_wide_is_cut_to_and_fro() {
        Milled rows = new PocketWay(120, 30, 6, 12, 8, true).milled();
        long along = rows.lanes().get(0).edges().stream()
                .filter(edge -> edge instanceof Straight
                        && Math.abs(edge.to().x() - edge.from().x()) > 90)
                .count();

        assertThat(along).as("four rows and twice along the walls").isEqualTo(6);
    }
}

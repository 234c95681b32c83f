package setwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;

class StockTest {
    private static final Point3 SIZE = new Point3(82, 52, 40);
    private static final Stock BLOCK = Stock.block(SIZE);
    private static final Prism FACED = Prism.box(new Point2(-30, -30), new Point2(112, 82), 38, 41);

    @Test
    void a_block_has_its_volume_and_its_centroid_in_the_middle() {
        Bulk bulk = BLOCK.bulk();

        assertThat(bulk.volume()).isEqualTo(82.0 * 52 * 40);
        assertThat(bulk.centroid().distance(new Point3(41, 26, 20))).isCloseTo(0, within(1e-9));
    }

    /** 82 x 52 x 38 less a hole of 12 through and four blind ones of 6.8, 20 deep, with a point of 118 degrees. */
    @Test
    void a_faced_and_drilled_block_has_the_volume_of_elementary_geometry() {
        double point = 3.4 / Math.tan(Math.toRadians(59));
        Stock stock = BLOCK.less(FACED).less(new UprightCylinder(new Point2(41, 26), 6, -3, 45));
        for (Point2 at : List.of(p(13, 11), p(69, 11), p(69, 41), p(13, 41))) {
            stock = stock.less(new UprightCylinder(at, 3.4, 18, 45).pointedDown(point));
        }

        double holes = Math.PI * 36 * 38 + 4 * Math.PI * 3.4 * 3.4 * (20 + point / 3);
        assertThat(stock.bulk().volume()).isCloseTo(82 * 52 * 38 - holes, within(1e-6 * holes));
        assertThat(stock.bulk().centroid().plan().distance(p(41, 26))).isCloseTo(0, within(1e-9));
    }

    /** Two slots of 10 x 8 crossing in the middle: what both take counts once. */
    @Test
    void crossing_slots_take_their_crossing_once() {
        Stock stock = BLOCK.less(Prism.box(p(-1, 21), p(83, 31), 32, 41)).less(Prism.box(p(36, -1), p(46, 53), 32, 41));

        assertThat(stock.bulk().volume()).isCloseTo(82 * 52 * 40 - 8 * (820 + 520 - 100), within(1e-6));
        assertThat(stock.layers()).hasSize(2);
        assertThat(stock.layers().get(1).region().outers()).hasSize(4);
    }

    /** Two holes of 12, 8 apart, cross in a lens. */
    @Test
    void holes_that_run_into_each_other_take_their_lens_once() {
        Stock stock =
                BLOCK.less(new UprightCylinder(p(37, 26), 6, -1, 41)).less(new UprightCylinder(p(45, 26), 6, -1, 41));
        double lens = 2 * (36 * Math.acos(4.0 / 6) - 4 * Math.sqrt(20));
        double removed = 40 * (72 * Math.PI - lens);

        assertThat(82 * 52 * 40 - stock.bulk().volume()).isCloseTo(removed, within(1e-4 * removed));
    }

    /** A countersink over a hole of its smaller radius. */
    @Test
    void a_countersink_takes_a_frustum() {
        Stock stock = BLOCK.less(new UprightCylinder(p(41, 26), 3, -1, 41))
                .less(new UprightCone(p(41, 26), new Profile(36, 41, 3, 8)));
        double sunk = Math.PI * 4 / 3 * (9 + 21 + 49) - Math.PI * 9 * 4;

        assertThat(82 * 52 * 40 - stock.bulk().volume()).isCloseTo(Math.PI * 9 * 40 + sunk, within(1e-3));
    }

    @Test
    void the_volume_of_odd_cuts_agrees_with_a_count_of_random_places() {
        int places = 40_000;
        Rounds.each(31, Math.min(10, Rounds.count(10)), (random, round) -> {
            Stock stock = BLOCK;
            for (int i = 0; i < 5; i++) {
                stock = stock.less(cut(random));
            }
            int inside = 0;
            for (int i = 0; i < places; i++) {
                inside += isMaterial(stock, place(random)) ? 1 : 0;
            }
            double whole = 82 * 52 * 40;
            double share = (double) inside / places;
            double spread = whole * Math.sqrt(share * (1 - share) / places);

            assertThat(stock.bulk().volume()).isCloseTo(share * whole, within(5 * spread));
        });
    }

    @Test
    void facing_lowers_the_top_and_a_hole_lowers_it_to_its_floor() {
        Stock stock = BLOCK.less(FACED).less(new UprightCylinder(p(41, 26), 6, 18, 45).pointedDown(3));

        assertThat(stock.top()).isEqualTo(38);
        assertThat(stock.heightAt(p(10, 10))).hasValue(38);
        assertThat(stock.heightAt(p(45, 26))).hasValueCloseTo(17.0, within(1e-9));
        assertThat(stock.heightAt(p(41, 26))).hasValueCloseTo(15.0, within(1e-9));
        assertThat(stock.heightAt(p(90, 26))).isEmpty();
        assertThat(stock.less(new UprightCylinder(p(41, 26), 5, -1, 20)).heightAt(p(41, 26)))
                .isEmpty();
    }

    @Test
    void the_top_is_where_the_first_material_under_a_place_is() {
        Rounds.each(32, (random, round) -> {
            Stock stock = BLOCK.less(cut(random)).less(cut(random)).less(cut(random));
            Point3 at = place(random);
            double top = stock.heightAt(at.plan()).orElse(0);

            for (double z = 39.95; z > top + 1e-6; z -= 0.1) {
                assertThat(isMaterial(stock, new Point3(at.x(), at.y(), z))).isFalse();
            }
            if (top > 0) {
                assertThat(isMaterial(stock, new Point3(at.x(), at.y(), top - 1e-6)))
                        .isTrue();
            }
        });
    }

    @Test
    void a_cut_counts_as_gone_only_where_it_is_gone_over_the_whole_band() {
        Stock stock = BLOCK.less(new UprightCylinder(p(41, 26), 6, 20, 41));

        assertThat(stock.shadow(25, 35).contains(p(41, 26))).isFalse();
        assertThat(stock.shadow(20, 40).contains(p(41, 26))).isFalse();
        assertThat(stock.shadow(19.9, 30).contains(p(41, 26))).isTrue();
        assertThat(stock.shadow(40, 50).isEmpty()).isTrue();
    }

    @Test
    void a_hole_below_a_faced_top_is_gone_through_both() {
        Stock stock = BLOCK.less(FACED).less(new UprightCylinder(p(41, 26), 6, -1, 38));

        assertThat(stock.shadow(30, 40).contains(p(41, 26))).isFalse();
        assertThat(stock.shadow(30, 40).distance(p(41, 26))).isEqualTo(6);
    }

    @Test
    void no_material_is_ever_missing_from_shadow_layers_and_solid() {
        Rounds.each(33, (random, round) -> {
            Stock stock = BLOCK;
            for (int i = 0; i < 4; i++) {
                stock = stock.less(cut(random));
            }
            double low = 45 * random.nextDouble() - 3;
            double high = low + 15 * random.nextDouble();
            Region shadow = stock.shadow(low, high);
            Union solid = stock.solid();
            for (int i = 0; i < 200; i++) {
                Point3 p = place(random);
                if (isMaterial(stock, p)) {
                    assertThat(holds(stock.layers(), p)).as("layer at %s", p).isTrue();
                    assertThat(solid.parts()).as("solid at %s", p).anyMatch(part -> holds(part, p));
                    assertThat(p.z() < low || p.z() > high || shadow.contains(p.plan()))
                            .as("shadow at %s", p)
                            .isTrue();
                }
            }
        });
    }

    @Test
    void what_is_gone_of_straight_cuts_is_gone_from_the_solid() {
        Rounds.each(34, (random, round) -> {
            Stock stock =
                    BLOCK.less(FACED).less(slot(random)).less(hole(random)).less(hole(random));
            List<Single> solid = stock.solid().parts();
            for (int i = 0; i < 100; i++) {
                Point3 p = place(random);
                boolean nearRim = stock.cuts().stream().anyMatch(cut -> isNearRim(cut, p));

                if (!nearRim && !isMaterial(stock, p)) {
                    assertThat(solid).noneMatch(part -> holds(part, p));
                }
            }
        });
    }

    /** The dovetail is 2 in radius at the top and 10 at the foot: below a height of 20 a hole more counts as well. */
    @Test
    void a_cut_that_widens_downward_takes_nothing_from_the_layers_over_it() {
        Stock stock = BLOCK.less(new UprightCone(p(41, 26), new Profile(0, 40, 10, 2)))
                .less(new UprightCylinder(p(10, 10), 3, 20, 41));

        assertThat(stock.shadow(0, 40).contains(p(45, 26))).isTrue();
        assertThat(stock.solid().parts()).anyMatch(part -> holds(part, new Point3(45, 26, 39)));
        assertThat(stock.solid().parts()).noneMatch(part -> holds(part, new Point3(45, 26, 1)));
    }

    @Test
    void the_solid_reaches_down_from_every_top_as_far_as_the_stock_below_holds_it() {
        Stock stock = BLOCK.less(Prism.box(p(-1, -1), p(20, 53), 30, 41))
                .less(new UprightCylinder(p(41, 26), 6, 20, 41).pointedDown(3));

        assertThat(stock.layers()).hasSize(4);
        assertThat(stock.solid().parts())
                .hasSize(4)
                .allSatisfy(part -> assertThat(part.zLow()).isZero());
    }

    @Test
    void turned_over_the_stock_keeps_its_volume_and_shows_its_other_end() {
        Stock stock = BLOCK.less(FACED).less(new UprightCylinder(p(20, 10), 6, 18, 45).pointedDown(3));
        Placement over = Placement.resting(new Attitude(Side.BOTTOM, 1), SIZE, new Point3(0, 0, -2));

        Stock turned = stock.placed(over);

        assertThat(turned.bulk().volume()).isCloseTo(stock.bulk().volume(), within(1e-6));
        assertThat(turned.top()).isEqualTo(38);
        assertThat(turned.layers().get(0).zLow()).isZero();
        Point3 hole = over.toTable(new Point3(20, 10, 0));
        assertThat(turned.heightAt(hole.plan())).hasValue(38);
        assertThat(turned.shadow(1, 2).contains(hole.plan())).isFalse();
    }

    @Test
    void on_its_side_a_hole_takes_as_much_as_upright() {
        Stock stock = BLOCK.less(FACED).less(new UprightCylinder(p(20, 10), 6, -1, 45));
        Placement onEnd = Placement.resting(new Attitude(Side.RIGHT, 0), SIZE, Point3.ORIGIN);

        assertThat(stock.placed(onEnd).bulk().volume())
                .isCloseTo(82 * 52 * 38 - Math.PI * 36 * 38, within(1e-6 * Math.PI * 36 * 38));
    }

    @Test
    void what_is_cut_on_one_side_is_gone_on_every_other_and_comes_back_exact() {
        Stock stock = BLOCK.less(FACED).less(new UprightCylinder(p(20, 10), 6, -1, 45));
        Placement onEnd = Placement.resting(new Attitude(Side.RIGHT, 3), SIZE, new Point3(5, 6, 7));
        UprightCylinder fromTheEnd = new UprightCylinder(p(20, 40), 4, 50, 100);
        Stock lying = stock.placed(onEnd);
        Stock drilled = lying.less(fromTheEnd);

        double hole = Math.PI * 16 * (onEnd.of(Box.of(Point3.ORIGIN, SIZE)).zHigh() - 50);
        assertThat(lying.bulk().volume() - drilled.bulk().volume()).isCloseTo(hole, within(1e-6 * hole));
        Stock back = drilled.placed(onEnd.inverse());
        assertThat(back.bulk().volume()).isCloseTo(stock.bulk().volume() - hole, within(1e-6 * hole));
        assertThat(back.heightAt(p(20, 10))).isEmpty();
        assertThat(back.placed(onEnd).bulk().volume()).isCloseTo(drilled.bulk().volume(), within(1e-6 * hole));
    }

    @Test
    void all_cut_away_is_nothing_at_all() {
        Stock nothing = BLOCK.less(Prism.box(p(-1, -1), p(100, 100), -1, 50));

        assertThat(nothing.solid().box().isEmpty()).isTrue();
        assertThat(nothing.bulk().volume()).isZero();
        assertThat(nothing.top()).isZero();
    }

    @Test
    void the_bulk_of_a_solid_is_that_of_elementary_geometry() {
        Bulk cone = new UprightCone(p(3, 4), new Profile(10, 22, 0, 5)).bulk();
        Union twoBoxes = Union.of(Prism.box(p(0, 0), p(10, 10), 0, 10), Prism.box(p(5, 0), p(15, 10), 0, 10));

        assertThat(cone.volume()).isCloseTo(Math.PI * 25 * 12 / 3, within(1e-6));
        assertThat(cone.centroid().distance(new Point3(3, 4, 10 + 9))).isCloseTo(0, within(1e-6));
        assertThat(twoBoxes.bulk().volume()).isCloseTo(1500, within(1e-9));
        assertThat(twoBoxes.bulk().centroid().x()).isCloseTo(7.5, within(1e-9));
    }

    private static Point2 p(double x, double y) {
        return new Point2(x, y);
    }

    private static Solid cut(RandomGenerator random) {
        return switch (random.nextInt(4)) {
            case 0 -> hole(random);
            case 1 -> hole(random).pointedDown(1 + 4 * random.nextDouble());
            case 2 -> slot(random);
            default ->
                new UprightCone(plan(random), new Profile(30, 41, 12 * random.nextDouble(), 1 + random.nextInt(12)));
        };
    }

    private static UprightCylinder hole(RandomGenerator random) {
        return new UprightCylinder(plan(random), 1 + 8 * random.nextDouble(), 35 * random.nextDouble(), 41);
    }

    private static Prism slot(RandomGenerator random) {
        double floor = 35 * random.nextDouble();
        return new Prism(
                Region.of(Outline.slot(plan(random), plan(random), 1 + 5 * random.nextDouble())),
                floor,
                floor + 6 + 30 * random.nextDouble());
    }

    private static Point2 plan(RandomGenerator random) {
        return new Point2(82 * random.nextDouble(), 52 * random.nextDouble());
    }

    private static Point3 place(RandomGenerator random) {
        return Point3.of(plan(random), 40 * random.nextDouble());
    }

    /** In the block and in no cut, by the plain inequalities of each. */
    private static boolean isMaterial(Stock stock, Point3 p) {
        return stock.cuts().stream().noneMatch(cut -> holds(cut, p));
    }

    private static boolean holds(List<Prism> layers, Point3 p) {
        return layers.stream().anyMatch(layer -> holds(layer, p));
    }

    private static boolean holds(Single solid, Point3 p) {
        if (p.z() < solid.zLow() || p.z() > solid.zHigh()) {
            return false;
        }
        return switch (solid.kind()) {
            case PRISM -> ((Prism) solid).region().contains(p.plan());
            case UPRIGHT_CYLINDER -> isIn((UprightCylinder) solid, p);
            case UPRIGHT_CONE -> isIn((UprightCone) solid, p);
            case TURNED, POLYHEDRON, UNION -> throw new AssertionError("not upright");
        };
    }

    private static boolean isIn(UprightCylinder cylinder, Point3 p) {
        return p.plan().distance(cylinder.axis()) < cylinder.radius();
    }

    private static boolean isIn(UprightCone cone, Point3 p) {
        Profile profile = cone.profile();
        double share = (p.z() - profile.zLow()) / profile.height();
        double radius = profile.radiusLow() + share * (profile.radiusHigh() - profile.radiusLow());
        return p.plan().distance(cone.axis()) < radius;
    }

    private static boolean isNearRim(Single cut, Point3 p) {
        Region region = cut.core(cut.zLow(), cut.zHigh());
        boolean nearEnd = Math.abs(p.z() - cut.zLow()) < 0.01 || Math.abs(p.z() - cut.zHigh()) < 0.01;
        return nearEnd || Math.abs(region.distance(p.plan())) < 0.02;
    }
}

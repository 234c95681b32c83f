package setwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.geometry.Point3;
import setwright.geometry.Prism;
import setwright.geometry.Profile;
import setwright.geometry.Stock;
import setwright.geometry.UprightCone;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;

class StockSectionTest {
    private static final Stock BLOCK = Stock.block(new Point3(20, 10, 10));
    private static final Point2 MIDDLE = new Point2(10, 5);

    @Test
    void a_whole_block_is_cut_as_one_rectangle() {
        StockSection cut = StockSection.of(BLOCK, new Chords(View.FRONT, 5));

        assertThat(area(cut)).isCloseTo(200, within(1e-9));
        assertThat(cut.outline()).hasSize(4);
        assertThat(cut.rims()).isEmpty();
    }

    /** 3-4-5: a plane 1.8 beside the axis of a hole of radius 3 is open over 2 x 2.4. */
    @Test
    void a_hole_beside_the_plane_is_as_wide_as_its_chord() {
        Stock drilled = BLOCK.less(new UprightCylinder(MIDDLE, 3, -1, 11));
        StockSection cut = StockSection.of(drilled, new Chords(View.FRONT, 5 - 1.8));

        assertThat(area(cut)).isCloseTo(200 - 48, within(1e-9));
        assertThat(cut.areas()).hasSize(2);
        assertThat(cut.rims()).as("far rims at top and bottom").hasSize(2);
    }

    @Test
    void a_hole_that_the_plane_does_not_meet_is_not_seen() {
        Stock drilled = BLOCK.less(new UprightCylinder(MIDDLE, 3, -1, 11));

        assertThat(area(StockSection.of(drilled, new Chords(View.FRONT, 1)))).isCloseTo(200, within(1e-9));
    }

    @Test
    void a_blind_hole_leaves_its_floor() {
        Stock drilled = BLOCK.less(new UprightCylinder(MIDDLE, 3, 4, 11));

        assertThat(area(StockSection.of(drilled, new Chords(View.SIDE, 10)))).isCloseTo(100 - 6 * 6, within(1e-9));
    }

    /** The triangle of a cone cut through its axis: radius 4 over a height of 4. */
    @Test
    void a_cone_cut_through_its_axis_is_a_triangle() {
        Stock spotted = BLOCK.less(new UprightCone(MIDDLE, new Profile(6, 11, 0, 5)));

        assertThat(area(StockSection.of(spotted, new Chords(View.FRONT, 5)))).isCloseTo(200 - 16, within(1e-4));
    }

    @Test
    void what_an_operation_takes_is_the_difference() {
        Stock faced = BLOCK.less(Prism.box(new Point2(-1, -1), new Point2(21, 11), 8, 11));
        StockSection gone = StockSection.gone(BLOCK, faced, new Chords(View.FRONT, 5));

        assertThat(area(gone)).isCloseTo(40, within(1e-9));
        assertThat(gone.areas())
                .singleElement()
                .satisfies(area -> assertThat(Moved.box(area).yLow()).isEqualTo(8));
    }

    @Test
    void a_slot_with_round_ends_is_cut_where_the_plane_meets_it() {
        Stock slotted = BLOCK.less(new Prism(
                setwright.geometry.plane.Region.of(Outline.slot(new Point2(6, 5), new Point2(14, 5), 2)), 0, 10));

        assertThat(area(StockSection.of(slotted, new Chords(View.FRONT, 5)))).isCloseTo(200 - 120, within(1e-9));
        assertThat(area(StockSection.of(slotted, new Chords(View.SIDE, 10)))).isCloseTo(100 - 40, within(1e-9));
    }

    @Test
    void sections_of_overlapping_holes_count_what_is_open_once() {
        Rounds.each(21, (random, round) -> {
            double off = random.nextDouble(0, 6);
            Stock two = BLOCK.less(new UprightCylinder(MIDDLE, 3, -1, 11))
                    .less(new UprightCylinder(MIDDLE.plus(new Point2(off, 0)), 3, -1, 11));
            double open = 6 + Math.min(off, 6);
            assertThat(area(StockSection.of(two, new Chords(View.FRONT, 5)))).isCloseTo(200 - 10 * open, within(1e-6));
        });
    }

    private static double area(StockSection section) {
        double sum = 0;
        for (List<Point2> area : section.areas()) {
            sum += Outline.polygon(area).area();
        }
        return sum;
    }
}

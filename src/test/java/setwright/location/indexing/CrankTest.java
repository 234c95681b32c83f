package setwright.location.indexing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.quantity.CsvRows;
import setwright.quantity.Rational;

/** Positions are taken from the list, never added up. */
class CrankTest {
    private static final Rational MINUTE = Rational.of(1, 60);

    @Test
    void the_list_closes_exactly_and_no_position_is_off_by_more_than_half_a_mark() {
        Rounds.each(7, (random, round) -> {
            Crank crank = new Crank(random.nextInt(1, 200), random.nextInt(1, 300));
            int divisions = random.nextInt(1, 500);
            List<Crank.Position> positions = crank.positions(divisions);
            Crank.Position last = positions.get(divisions);
            assertThat(positions).hasSize(divisions + 1);
            assertThat(last.turns()).isEqualTo(crank.ratio());
            assertThat(last.marks()).isZero();
            assertThat(last.error()).isEqualTo(Rational.ZERO);
            Rational half = Rational.of(1, 2L * crank.ratio() * crank.marks());
            assertThat(crank.worst(divisions)).isLessThanOrEqualTo(half);
            for (int j = 0; j <= divisions; j++) {
                Crank.Position at = positions.get(j);
                Rational reached =
                        Rational.of(at.turns() * crank.marks() + at.marks(), (long) crank.ratio() * crank.marks());
                assertThat(reached.minus(at.error())).isEqualTo(Rational.of(j, divisions));
            }
        });
    }

    /** A step rounded to the minute and added up closes 2' out over 7 and 6' over 13; the list closes at nought. */
    @Test
    void a_rounded_step_added_up_would_not_close() {
        assertThat(addedUp(7)).isEqualTo(Rational.of(2, 60));
        assertThat(addedUp(13)).isEqualTo(Rational.of(-6, 60).negate());
        for (int divisions : new int[] {7, 13}) {
            Crank crank = Crank.rotary(90, MINUTE);
            assertThat(crank.positions(divisions).get(divisions).error()).isEqualTo(Rational.ZERO);
            assertThat(crank.worst(divisions).times(360 * 3600).nearest()).isLessThanOrEqualTo(30);
        }
    }

    private static Rational addedUp(int divisions) {
        Rational step = Rational.of(360, divisions);
        Rational rounded =
                new Rational(step.times(60).plus(Rational.of(1, 2)).floor(), java.math.BigInteger.valueOf(60));
        Rational closing = rounded.times(divisions).minus(Rational.of(360));
        return closing.signum() < 0 ? closing.negate() : closing;
    }

    @Test
    void every_division_of_a_direct_plate_or_block_is_the_step_of_the_table() {
        for (CsvRows.Row row : Moves.table("direct-and-blocks.csv")) {
            int positions = (int) row.number("positions");
            int divisions = (int) row.number("divisions");
            Crank plate = new Crank(1, positions);
            assertThat(plate.divides(divisions)).isTrue();
            assertThat(plate.positions(divisions).get(1).marks()).isEqualTo((int) row.number("step_per_division"));
            assertThat(360.0 / positions).isEqualTo(row.number("deg_per_step"));
        }
        assertThat(new Crank(1, 6).divides(12)).isFalse();
        assertThat(new Crank(1, 24).divides(9)).isFalse();
    }

    @Test
    void a_dial_whose_divisions_do_not_fill_a_turn_is_refused() {
        assertThatThrownBy(() -> Crank.rotary(90, Rational.of(7, 60)))
                .hasMessageContaining("no whole number of divisions");
    }

    @Test
    void an_angle_that_went_through_radians_is_the_fraction_again() {
        Rounds.each(8, (random, round) -> {
            Rational degrees = Rational.of(random.nextInt(1, 360 * 3600), random.nextInt(1, 4000));
            if (degrees.nearest() <= 360) {
                assertThat(Degrees.exact(Math.toRadians(degrees.nearest()))).isEqualTo(degrees);
            }
        });
        assertThat(Degrees.said(Rational.of(360, 7))).isEqualTo("51° 25' 42.86\"");
        assertThat(Degrees.said(Rational.of(53, 6))).isEqualTo("8° 50'");
    }

    @Test
    void steps_that_share_a_factor_with_the_divisions_are_refused() {
        IndexHead head = IndexHead.of(40, IndexPlates.THREE_PLATE);
        assertThatThrownBy(() -> BlockIndexing.of(28, 4, head)).hasMessageContaining("reach only 7 of the 28");
        BlockIndexing.Way way = BlockIndexing.of(28, 5, head).orElseThrow();
        assertThat(way.move().inTurns().times(28)).isEqualTo(Rational.of(40 * 5));
    }

    @Test
    void ways_come_in_the_order_of_their_trouble_and_say_why() {
        IndexHead head = IndexHead.of(40, IndexPlates.THREE_PLATE);
        for (int n : new int[] {2, 24, 51, 69, 127, 383, 9973}) {
            List<IndexWay> ways = IndexWays.of(n, 24, head);
            assertThat(ways).isNotEmpty().isSortedAccordingTo(java.util.Comparator.comparing(IndexWay::method));
            assertThat(ways).allSatisfy(way -> assertThat(way.why()).isNotBlank());
            assertThat(ways.get(0).exact()).as("%s", n).isEqualTo(n < 383);
        }
    }
}

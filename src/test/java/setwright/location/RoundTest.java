package setwright.location;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.quantity.CsvRows;

/** Circles, chords and flats against tables, and there and back. */
class RoundTest {
    private static final double SAME = 1e-9;

    @Test
    void flats_are_those_of_the_polygon_table() {
        for (CsvRows.Row row : CsvRows.beside(RoundTest.class, "polygon-from-round.csv")) {
            double across = 1 / FlatsOnRound.round(1, row.number("sides"));
            assertThat(across / 2).isCloseTo(row.number("centre_to_flat"), within(1e-6));
            assertThat(FlatsOnRound.DEPTH.kernel().applyAsDouble(new double[] {1, across}))
                    .isCloseTo(row.number("depth_of_cut"), within(1e-6));
            assertThat(BoltCircle.chord(1, row.number("sides"))).isCloseTo(row.number("side_length"), within(1e-6));
        }
    }

    /** The printed table has 0.2070 for 15 holes and 0.1838 for 17: 0.2079 and 0.1837 are right. */
    @Test
    void chords_are_those_of_the_table_but_for_its_misprints() {
        for (CsvRows.Row row : CsvRows.beside(RoundTest.class, "chord-factors.csv")) {
            double chord = BoltCircle.chord(1, row.number("holes"));
            assertThat(chord).isCloseTo(row.number("factor"), within(5e-9));
            if (row.has("printed") && row.text("check").equals("OK")) {
                assertThat(chord).isCloseTo(row.number("printed"), within(0.00006));
            }
        }
    }

    @Test
    void a_circle_of_holes_turned_there_and_back_is_where_it_was() {
        Rounds.each(31, (random, round) -> {
            int holes = random.nextInt(2, 60);
            Place centre = new Place(random.nextDouble(-300, 300), random.nextDouble(-300, 300));
            double start = random.nextDouble(-6, 6);
            BoltCircle circle = BoltCircle.full(holes, random.nextDouble(1, 500), centre, start);
            double by = random.nextDouble(-6, 6);
            BoltCircle turned = BoltCircle.full(holes, circle.diameter(), centre, start + by);
            List<Place> places = circle.places();
            for (int i = 0; i < holes; i++) {
                assertSame(rotated(turned.places().get(i), centre, -by), places.get(i));
                assertThat(distance(places.get(i), places.get((i + 1) % holes)))
                        .isCloseTo(BoltCircle.chord(circle.diameter(), holes), within(SAME));
                assertThat(distance(places.get(i), centre)).isCloseTo(circle.diameter() / 2, within(SAME));
            }
        });
    }

    private static void assertSame(Place found, Place expected) {
        assertThat(distance(found, expected)).isLessThan(SAME);
    }

    private static double distance(Place a, Place b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    private static Place rotated(Place place, Place centre, double by) {
        double x = place.x() - centre.x();
        double y = place.y() - centre.y();
        return new Place(
                centre.x() + x * Math.cos(by) - y * Math.sin(by), centre.y() + x * Math.sin(by) + y * Math.cos(by));
    }
}

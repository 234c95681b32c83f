package setwright.location;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.Rounds;
import setwright.quantity.CsvRows;
import setwright.quantity.Source;

class LocationChecksTest {
    private static final double INCH = 25.4;

    static List<CsvRows.Row> checks() {
        return CsvRows.beside(LocationChecksTest.class, "location-checks.csv");
    }

    static List<CsvRows.Row> circles() {
        return CsvRows.beside(LocationChecksTest.class, "bolt-circle-checks.csv");
    }

    @ParameterizedTest
    @MethodSource("checks")
    void worked_examples_come_out_as_their_sources_print_them(CsvRows.Row check) {
        double[] v = numbers(check.text("inputs"));
        double found = switch (check.text("what")) {
            case "worst case of equals" -> equals(v).worstCase();
            case "root sum square of equals" -> equals(v).rootSumSquare();
            case "hole worst case" -> hole(v).worstCase() / INCH;
            case "hole root sum square" -> hole(v).rootSumSquare() / INCH;
            case "growth" -> Thermal.growth(v[0], v[1], v[2]);
            case "touch-offs" -> TouchOff.error(v[0], v[1]);
            case "two loadings" -> TwoLoadings.error(new HoleErrors(v[0], 0, 0, 0, 0, 0, v[1], 0));
            case "chord" -> BoltCircle.chord(v[0], v[1]);
            default -> throw new IllegalArgumentException(check.text("what"));
        };

        assertThat(found).isCloseTo(check.number("result"), within(check.number("tolerance")));
    }

    private static ErrorBudget equals(double[] v) {
        var one = Contributor.eachAxis("one", v[1], Source.of("computed: example"));
        return ErrorBudget.alongAnAxis(Collections.nCopies((int) v[0], one));
    }

    private static ErrorBudget hole(double[] v) {
        return ErrorBudget.alongAnAxis(
                HoleErrors.byDial().withBacklash(v[1] * INCH).contributors(v[0] * INCH));
    }

    @ParameterizedTest
    @MethodSource("circles")
    void holes_of_a_bolt_circle_stand_where_their_sources_put_them(CsvRows.Row check) {
        var circle = BoltCircle.full(
                (int) check.number("holes"),
                check.number("diameter"),
                new Place(0, 0),
                Math.toRadians(check.number("start")));
        double[] wanted = numbers(check.text("places"));

        for (int i = 0; i < wanted.length / 2; i++) {
            var place = circle.places().get(i);
            assertThat(place.x()).isCloseTo(wanted[2 * i], within(check.number("tolerance")));
            assertThat(place.y()).isCloseTo(wanted[2 * i + 1], within(check.number("tolerance")));
        }
    }

    @Test
    void a_part_circle_has_its_first_and_last_hole_at_its_ends() {
        var quarter = new BoltCircle(3, 100, new Place(10, 20), 0, -Math.PI / 2);

        assertThat(quarter.places()).hasSize(3);
        assertThat(quarter.places().get(2).x()).isCloseTo(10, within(1e-9));
        assertThat(quarter.places().get(2).y()).isCloseTo(-30, within(1e-9));
        assertThat(new BoltCircle(1, 100, new Place(0, 0), 0, 1).places()).containsExactly(new Place(50, 0));
        assertThatThrownBy(() -> BoltCircle.full(0, 100, new Place(0, 0), 0)).hasMessageContaining("0 holes");
    }

    /** Every hole is a chord from the next, and half the diameter from the centre. */
    @Test
    void a_full_circle_closes() {
        Rounds.each(51, (random, round) -> {
            int holes = random.nextInt(2, 40);
            var centre = new Place(random.nextDouble(-50, 50), random.nextDouble(-50, 50));
            double diameter = random.nextDouble(5, 300);
            var places = BoltCircle.full(holes, diameter, centre, random.nextDouble(7))
                    .places();

            for (int i = 0; i < holes; i++) {
                assertThat(distance(places.get(i), places.get((i + 1) % holes)))
                        .isCloseTo(BoltCircle.chord(diameter, holes), within(1e-9));
                assertThat(distance(places.get(i), centre)).isCloseTo(diameter / 2, within(1e-9));
            }
        });
    }

    /** Four holes on 56 x 30 about the middle of 82 x 52: 13 and 69 in X, 11 and 41 in Y. */
    @Test
    void a_rectangle_of_holes_is_walked_round() {
        assertThat(Grid.corners(56, 30, new Place(41, 26)).places())
                .containsExactly(new Place(13, 11), new Place(69, 11), new Place(69, 41), new Place(13, 41));
        assertThat(new Grid(3, 1, 10, 0, new Place(0, 0)).places())
                .containsExactly(new Place(-10, 0), new Place(0, 0), new Place(10, 0));
        assertThatThrownBy(() -> new Grid(0, 1, 10, 0, new Place(0, 0))).hasMessageContaining("0 columns");
    }

    private static double distance(Place one, Place other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}

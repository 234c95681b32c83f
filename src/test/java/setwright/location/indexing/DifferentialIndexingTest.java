package setwright.location.indexing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.quantity.CsvRows;
import setwright.quantity.Rational;

/** The plate geared to the spindle: exact throughout. */
class DifferentialIndexingTest {
    @ParameterizedTest
    @ValueSource(strings = {"three-plate", "two-sided"})
    void the_twelve_gears_reach_every_number_from_2_to_382_and_first_fail_at_383(String family) {
        IndexHead head = Moves.head(family);
        for (int n = 2; n <= 382; n++) {
            boolean plain = !PlainIndexing.exact(head.turns(n, 1), head).isEmpty();
            List<DifferentialWay> ways = DifferentialIndexing.ways(n, head);
            assertThat(plain || !ways.isEmpty()).as("%s %s", family, n).isTrue();
            if (!ways.isEmpty()) {
                assertExact(n, head, ways.get(0));
            }
        }
        assertThat(PlainIndexing.exact(head.turns(383, 1), head)).isEmpty();
        assertThat(DifferentialIndexing.ways(383, head)).isEmpty();
    }

    /** Plate-relative turns are N moves, and no gear is in the train more often than it is owned. */
    private static void assertExact(int n, IndexHead head, DifferentialWay way) {
        Rational relative = Rational.of(head.ratio()).minus(way.plateTurns());
        assertThat(way.move().inTurns().times(n)).isEqualTo(relative);
        Rational driven = way.train().ratio();
        assertThat(way.withCrank() ? driven : driven.negate()).isEqualTo(way.plateTurns());
        assertThat(way.train().gears())
                .allSatisfy(
                        teeth -> assertThat(Collections.frequency(way.train().gears(), teeth))
                                .isLessThanOrEqualTo(Collections.frequency(head.gears(), teeth)));
    }

    @Test
    void every_way_is_exact_and_no_gear_is_used_twice_that_is_there_once() {
        IndexHead head = Moves.head("three-plate");
        for (int n : new int[] {7, 51, 107, 271, 319, 1440}) {
            assertThat(DifferentialIndexing.ways(n, head)).isNotEmpty().allSatisfy(way -> assertExact(n, head, way));
        }
    }

    @Test
    void every_row_of_the_printed_tables_is_found_with_its_plate_turns_direction_and_idlers() {
        IndexHead head = Moves.head("three-plate");
        for (CsvRows.Row row : Moves.table("differential-index.csv")) {
            int n = (int) row.number("divisions");
            DifferentialWay ours = DifferentialIndexing.ways(n, head).stream()
                    .filter(way -> way.move().circle() == (int) row.number("circle"))
                    .filter(way -> way.move().turns() == 0 && way.move().holes() == (int) row.number("holes"))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(n + " is not found"));
            assertThat(ours.plateTurns()).as("%s", n).isEqualTo(Moves.fraction(row.text("x")));
            assertThat(ours.withCrank()).isEqualTo(row.text("plate_direction").equals("same as crank"));
            GearTrain printed = printed(row);
            assertThat(printed.ratio()).isEqualTo(ours.train().ratio());
            assertThat(GearTrains.OF_TWELVE.with(printed.ratio()).stream().map(DifferentialIndexingTest::turned))
                    .as("%s", n)
                    .contains(turned(printed));
            DifferentialWay asPrinted = new DifferentialWay(ours.move(), ours.plateTurns(), printed);
            assertThat(asPrinted.idlers()).as("%s", n).isEqualTo((int) row.number("idlers"));
        }
    }

    private static GearTrain printed(CsvRows.Row row) {
        int spindle = (int) row.number("gear_on_spindle");
        int worm = (int) row.number("gear_on_worm");
        return row.text("stud_1st").equals("-")
                ? new GearTrain(List.of(spindle, worm))
                : new GearTrain(List.of(spindle, (int) row.number("stud_2nd"), (int) row.number("stud_1st"), worm));
    }

    /** Drivers and driven may change places among themselves. */
    static List<Set<Integer>> turned(GearTrain train) {
        List<Integer> gears = train.gears();
        return train.simple()
                ? List.of(Set.of(gears.get(0)), Set.of(gears.get(1)))
                : List.of(
                        new LinkedHashSet<>(List.of(gears.get(0), gears.get(2))),
                        new LinkedHashSet<>(List.of(gears.get(1), gears.get(3))));
    }

    @Test
    void two_gears_come_before_four_and_a_slow_plate_before_a_fast_one() {
        List<DifferentialWay> ways = DifferentialIndexing.ways(79, Moves.head("three-plate"));
        for (int i = 1; i < ways.size(); i++) {
            DifferentialWay before = ways.get(i - 1);
            DifferentialWay after = ways.get(i);
            assertThat(before.train().simple() || !after.train().simple()).isTrue();
            if (before.train().simple() == after.train().simple()) {
                assertThat(before.plateLoad()).isLessThanOrEqualTo(after.plateLoad());
            }
        }
    }

    /** Insisting on a whole number to change from loses numbers that two gears reach: 219 instead of 227. */
    @Test
    void two_gears_reach_227_numbers_to_400_that_one_circle_does_not_or_does() {
        IndexHead head = Moves.head("three-plate");
        long reached = java.util.stream.IntStream.rangeClosed(2, 400)
                .filter(n -> PlainIndexing.exact(head.turns(n, 1), head).isEmpty())
                .filter(n -> DifferentialIndexing.ways(n, head).stream()
                        .anyMatch(way -> way.train().simple()))
                .count();
        assertThat(reached).isEqualTo(227);
    }
}

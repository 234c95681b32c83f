package setwright.location.indexing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.quantity.CsvRows;
import setwright.quantity.Rational;

/** Two circles of one face. The tables are exact; the handbook's printed errors are an upper bound. */
class CompoundIndexingTest {
    @ParameterizedTest
    @ValueSource(strings = {"three-plate", "two-sided"})
    void exactly_the_numbers_of_the_table_come_out_by_two_circles_and_not_by_one(String family) {
        IndexHead head = Moves.head(family);
        Set<Integer> expected = new LinkedHashSet<>();
        Moves.table("compound-index-exact.csv").stream()
                .filter(row -> row.text("family").equals(family))
                .forEach(row -> expected.add((int) row.number("divisions")));
        for (int n = 2; n <= 400; n++) {
            Rational turns = head.turns(n, 1);
            boolean plain = !PlainIndexing.exact(turns, head).isEmpty();
            boolean compound = !CompoundIndexing.exact(turns, head.plates()).isEmpty();
            assertThat(!plain && compound).as("%s %s", family, n).isEqualTo(expected.contains(n));
        }
    }

    /** A two-circle move is exact where the denominator of the turn divides the least common multiple of the circles. */
    @Test
    void the_moves_of_the_table_are_exact_and_ours_need_no_more_spaces() {
        for (CsvRows.Row row : Moves.table("compound-index-exact.csv")) {
            IndexHead head = Moves.head(row.text("family"));
            Rational turns = head.turns((int) row.number("divisions"), 1);
            List<TwoCircles> ways = CompoundIndexing.exact(turns, head.plates());
            assertThat(ways).allSatisfy(way -> assertThat(way.inTurns()).isEqualTo(turns));
            assertBest(row, "both_forward", turns, ways, true);
            assertBest(row, "one_back", turns, ways, false);
            assertThat(ways.get(0).same()).isEqualTo(row.has("both_forward"));
        }
    }

    private static void assertBest(
            CsvRows.Row row, String column, Rational turns, List<TwoCircles> ways, boolean same) {
        if (!row.has(column)) {
            return;
        }
        String printed = row.text(column);
        assertThat(Moves.sum(printed)).as(printed).isEqualTo(turns);
        long spaces = ways.stream()
                .filter(way -> way.same() == same)
                .mapToLong(TwoCircles::spaces)
                .min()
                .orElseThrow();
        assertThat(spaces).as(printed).isLessThanOrEqualTo(spaces(printed));
    }

    private static long spaces(String printed) {
        long sum = 0;
        for (String part : printed.split(" ")) {
            sum += Math.abs(Long.parseLong(part.split("/")[0].replace("+", "")));
        }
        return sum;
    }

    @Test
    void both_circles_of_a_move_are_on_one_face() {
        for (CsvRows.Row row : Moves.table("compound-index-exact.csv")) {
            IndexHead head = Moves.head(row.text("family"));
            assertThat(CompoundIndexing.exact(head.turns((int) row.number("divisions"), 1), head.plates()))
                    .allSatisfy(way -> assertThat(head.plates().faces())
                            .filteredOn(face -> face.name().equals(way.plate()))
                            .first()
                            .satisfies(face ->
                                    assertThat(face.circles()).contains(way.firstCircle(), way.secondCircle())));
        }
    }

    /** Of the handbook's 64 two-circle entries 13 are not the closest possible: its error is a bound, not the answer. */
    @Test
    void no_two_circle_move_of_the_handbook_comes_nearer_than_ours() {
        for (CsvRows.Row row : Moves.table("turn-fractions-handbook.csv")) {
            Rational printed = Rational.decimal(row.text("printed_value"));
            Rational handbook = Moves.sum(row.text("expression"));
            assertThat(handbook).isEqualTo(Moves.fraction(row.text("exact_fraction")));
            TwoCircles ours = CompoundIndexing.nearest(printed, Moves.plates(row.text("family")))
                    .orElseThrow();
            boolean two = row.text("kind").equals("two-circle");
            if (two) {
                assertThat(Math.abs(ours.inTurns().minus(printed).nearest()))
                        .isLessThanOrEqualTo(Math.abs(handbook.minus(printed).nearest()) + 1e-15);
            }
        }
    }

    @Test
    void steps_over_several_divisions_come_nearer_than_the_handbooks_106() {
        IndexHead head = new IndexHead(40, IndexPlates.reading("37,39,41,43,47,49"), "", List.of());
        CompoundIndexing.InSteps found =
                CompoundIndexing.nearestInSteps(106, head).orElseThrow();
        double handbook = Moves.sum("1+7/39+29/41").minus(head.turns(106, 5)).nearest();
        assertThat(Math.abs(found.error().nearest())).isLessThanOrEqualTo(Math.abs(handbook));
        assertThat(found.error()).isEqualTo(found.move().inTurns().minus(head.turns(106, found.steps())));
    }
}

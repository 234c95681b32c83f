package setwright.location.indexing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.quantity.CsvRows;
import setwright.quantity.Rational;

/** One circle: exact tables, exhaustive searches, and what a published row says. Tolerance nought throughout. */
class PlainIndexingTest {
    private static final int MOST = 400;

    static List<CsvRows.Row> published() {
        return Moves.table("simple-index-published.csv");
    }

    static List<CsvRows.Row> practice() {
        return Moves.table("practice-sheet-solved.csv");
    }

    @ParameterizedTest
    @ValueSource(strings = {"three-plate", "two-sided"})
    void every_number_to_400_agrees_with_trying_every_hole_of_every_circle(String family) {
        IndexHead head = Moves.head(family);
        for (int n = 2; n <= MOST; n++) {
            assertThat(PlainIndexing.exact(head.turns(n, 1), head).stream()
                            .map(move -> List.of((int) move.turns(), move.holes(), move.circle()))
                            .toList())
                    .as("%s, %s divisions", family, n)
                    .containsExactlyInAnyOrderElementsOf(tried(n, head.plates()));
        }
    }

    /** Whole numbers only: N (w H + h) = 40 H. */
    private static List<List<Integer>> tried(int n, IndexPlates plates) {
        List<List<Integer>> found = new ArrayList<>();
        for (PlateFace face : plates.faces()) {
            for (int circle : face.circles()) {
                for (int spaces = 0; spaces <= 40 * circle; spaces++) {
                    if (n * spaces == 40 * circle) {
                        found.add(List.of(spaces / circle, spaces % circle, circle));
                    }
                }
            }
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"three-plate", "two-sided"})
    void the_first_choice_and_all_choices_are_those_of_the_table(String family) {
        IndexHead head = Moves.head(family);
        Map<Integer, CsvRows.Row> rows = new LinkedHashMap<>();
        Moves.table("simple-index-" + family + ".csv").forEach(row -> rows.put((int) row.number("divisions"), row));
        for (int n = 2; n <= MOST; n++) {
            List<CrankMove> found = PlainIndexing.exact(head.turns(n, 1), head);
            assertThat(found.isEmpty()).as("%s", n).isEqualTo(!rows.containsKey(n));
            if (!found.isEmpty()) {
                assertRow(rows.get(n), found);
            }
        }
    }

    private static void assertRow(CsvRows.Row row, List<CrankMove> found) {
        assertThat(found.get(0).turns()).isEqualTo((long) row.number("whole_turns"));
        assertThat(found.get(0).holes()).isEqualTo((int) row.number("holes"));
        if (!row.text("circle").equals("any")) {
            assertThat(found.get(0).circle()).isEqualTo((int) row.number("circle"));
            assertThat(found.stream().map(move -> move.holes() + "/" + move.circle()))
                    .containsExactlyInAnyOrder(row.text("all_choices").split(" "));
        }
    }

    @ParameterizedTest
    @MethodSource("published")
    void a_published_move_is_found_on_its_circle(CsvRows.Row row) {
        int circle = (int) row.number("circle");
        IndexHead head = new IndexHead(
                (int) row.number("ratio"),
                new IndexPlates(List.of(new PlateFace("one", List.of(circle)))),
                "",
                List.of());
        Rational turns = row.text("kind").equals("div")
                ? head.turns((int) row.number("item"), 1)
                : head.turns(Rational.of((long) row.number("minutes"), 60));
        CrankMove nearest = PlainIndexing.nearest(turns, head);

        assertThat(nearest.turns()).isEqualTo((long) row.number("whole_turns"));
        assertThat(nearest.holes()).isEqualTo((int) row.number("holes"));
        // 24 minutes on the 23 circle is printed as if it were exact; it is half a minute short.
        assertThat(PlainIndexing.exact(turns, head).isEmpty())
                .isEqualTo(row.text("status").contains("APPROXIMATE"));
    }

    /** Of the sheet, 25 and 125 at 72 to 1 have no exact division on the circles that it lists. */
    @ParameterizedTest
    @MethodSource("practice")
    void the_practice_sheet_comes_out_as_divisions_and_as_degrees(CsvRows.Row row) {
        IndexHead head =
                new IndexHead((int) row.number("ratio"), IndexPlates.reading(row.text("circles")), "", List.of());
        int number = (int) row.number("number");
        assertSheet(row.text("as_divisions_turns_holes"), head, head.turns(number, 1));
        assertSheet(row.text("as_degrees_turns_holes"), head, head.turns(Rational.of(number)));
    }

    private static void assertSheet(String expected, IndexHead head, Rational turns) {
        List<CrankMove> found = PlainIndexing.exact(turns, head);
        if (expected.equals("NO EXACT SOLUTION")) {
            assertThat(found).isEmpty();
        } else if (expected.contains("any circle")) {
            assertThat(found).hasSameSizeAs(head.plates().faces().get(0).circles());
            assertThat(found)
                    .allSatisfy(move ->
                            assertThat(move.turns() + " turns, any circle").isEqualTo(expected));
        } else {
            assertThat(found.stream().map(move -> move.turns() + " " + move.holes() + "/" + move.circle()))
                    .containsExactlyInAnyOrder(expected.split(" or "));
        }
    }

    @Test
    void one_hole_of_every_circle_is_worth_the_minutes_of_the_table() {
        for (CsvRows.Row row : Moves.table("angle-per-hole.csv")) {
            IndexHead head = Moves.head(row.text("family"));
            int circle = (int) row.number("circle");
            assertThat(head.degrees(Rational.of(1, circle)).times(60))
                    .isEqualTo(Moves.fraction(row.text("minutes_per_hole_exact")));
            assertThat(exactOn(circle, Rational.ONE)).isEqualTo(row.has("whole_degrees_exact"));
            assertThat(exactOn(circle, Rational.of(3))).isEqualTo(row.has("three_degree_steps_exact"));
        }
    }

    private static boolean exactOn(int circle, Rational degrees) {
        IndexHead head = IndexHead.of(40, new IndexPlates(List.of(new PlateFace("one", List.of(circle)))));
        return !PlainIndexing.exact(head.turns(degrees), head).isEmpty();
    }

    @Test
    void every_ratio_of_the_table_turns_the_work_by_its_degrees() {
        for (CsvRows.Row row : Moves.table("rotary-ratios.csv")) {
            IndexHead head = IndexHead.of((int) row.number("ratio"), IndexPlates.THREE_PLATE);
            assertThat(head.degrees(Rational.ONE)).isEqualTo(Moves.fraction(row.text("deg_per_turn_exact")));
        }
    }

    @Test
    void the_mounted_plate_comes_first() {
        IndexHead head = new IndexHead(40, IndexPlates.THREE_PLATE, "plate 1", List.of());
        assertThat(PlainIndexing.exact(head.turns(3, 1), head).stream().map(CrankMove::circle))
                .containsExactly(18, 15, 39, 33, 27, 21);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -7, 10_001, 1_000_000_000})
    void a_circle_is_not_divided_in_none_or_in_a_thousand_million(int divisions) {
        assertThatThrownBy(() -> Moves.head("three-plate").turns(divisions, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1 to 10000, not in " + divisions);
    }

    @Test
    void plates_are_read_as_they_are_written_and_refused_by_what_is_wrong() {
        assertThat(IndexPlates.reading("15,16, 17;21 23").faces().stream().map(PlateFace::circles))
                .isEqualTo(Arrays.asList(List.of(15, 16, 17), List.of(21, 23)));
        assertThatThrownBy(() -> IndexPlates.reading("15,x")).hasMessageContaining("'15,x' is no index plate");
        assertThatThrownBy(() -> IndexPlates.reading("15;0")).hasMessageContaining("1 to 1000 holes");
        String many = IntStream.rangeClosed(1, 101).mapToObj(String::valueOf).collect(Collectors.joining(","));
        assertThatThrownBy(() -> IndexPlates.reading(many)).hasMessageContaining("1 to 100 circles");
    }
}

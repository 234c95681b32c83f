package setwright.quantity.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.quantity.CsvRows;
import setwright.quantity.thread.TapDrill.Drill;

class TapDrillTest {
    private static final List<Drill> STAND =
            List.of(new Drill("6.7", 6.7), new Drill("6.8", 6.8), new Drill("6.9", 6.9), new Drill("#7", 0.201 * 25.4));

    /** These two are customary although they come out a hair over class 2B (ASME B1.1). */
    private static final List<String> OVER_2B = List.of("9/16-18", "5/8-18");

    @Test
    void every_customary_tap_drill_lies_within_the_limits_but_for_two() {
        var outside = Threads.listed().rows().stream()
                .filter(row -> !row.takes(row.tapDrillDiameter()))
                .map(row -> row.thread().designation())
                .toList();

        assertThat(outside).isEqualTo(OVER_2B);
    }

    /** The percentages printed beside the usual tap drills: ISO 2306 and the 75 percent table, one decimal. */
    @Test
    void the_engagement_of_every_customary_drill_is_the_printed_one() {
        var printed = CsvRows.beside(TapDrill.class, "threads.csv");
        var rows = Threads.listed().rows();

        for (int i = 0; i < rows.size(); i++) {
            var customary = TapDrill.customary(rows.get(i), 0.75);
            assertThat(100 * customary.engagement())
                    .as(rows.get(i).thread().designation())
                    .isCloseTo(printed.get(i).number("percent_thread"), within(0.06));
        }
    }

    /** Major diameter less pitch gives 77.0 percent: the workshop rule of metric coarse threads. */
    @Test
    void major_less_pitch_is_77_percent() {
        assertThat(TapDrill.engagement(10, 1.5, 8.5)).isCloseTo(0.770, within(0.0005));
    }

    @Test
    void the_nearest_drill_is_taken_and_says_what_it_leaves() {
        var drill = TapDrill.nearest(Threads.listed().read("M8"), 0.75, STAND);

        // 8 - 0.75 x 1.299038 x 1.25 = 6.7822
        assertThat(drill.exact()).isCloseTo(6.7822, within(0.00005));
        assertThat(drill.drill().name()).isEqualTo("6.8");
        // (8 - 6.8) x 76.98 / 1.25 = 73.9 percent, the trade formula with its printed constant
        assertThat(100 * drill.engagement()).isCloseTo((8 - 6.8) * 76.98 / 1.25, within(0.01));
        assertThat(TapDrill.nearest(Threads.listed().read("1/4-20"), 0.75, STAND)
                        .drill()
                        .name())
                .isEqualTo("#7");
    }

    @Test
    void of_two_equally_near_the_larger_is_taken() {
        var thread = Threads.listed().read("M8");
        double exact = TapDrill.diameter(8, 1.25, 0.75);
        var pair = List.of(new Drill("under", exact - 0.0625), new Drill("over", exact + 0.0625));

        assertThat(TapDrill.nearest(thread, 0.75, pair).drill().name()).isEqualTo("over");
        assertThatThrownBy(() -> TapDrill.nearest(thread, 0.75, List.of()))
                .hasMessage("There is no drill to choose from.");
    }

    @Test
    void no_drill_of_the_stand_is_nearer() {
        Rounds.each(11, (random, round) -> {
            var rows = Threads.listed().rows();
            var thread = rows.get(random.nextInt(rows.size())).thread();
            List<Drill> stand = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(20); i++) {
                stand.add(new Drill("d" + i, random.nextDouble(0.5, 40)));
            }
            var found = TapDrill.nearest(thread, random.nextDouble(0.5, 0.9), stand);

            assertThat(stand)
                    .allSatisfy(other -> assertThat(Math.abs(other.diameter() - found.exact()))
                            .isGreaterThanOrEqualTo(Math.abs(found.drill().diameter() - found.exact())));
        });
    }
}

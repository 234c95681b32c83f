package setwright.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import setwright.Rounds;
import setwright.reach.KneeWindow.Bound;

class KneeHeightsTest {
    @Test
    void tools_whose_windows_meet_share_a_height() {
        var spot = window("spot", 300, 400);
        var drill = window("drill", 350, 450);
        var face = window("face", 203, 203);

        var heights = KneeHeights.fewest(List.of(spot, drill, face));

        assertThat(heights).hasSize(2);
        assertThat(heights.get(0).windows()).containsExactly(face);
        assertThat(heights.get(1).windows()).containsExactly(spot, drill);
        assertThat(heights.get(1).low()).isEqualTo(350);
        assertThat(heights.get(1).high()).isEqualTo(400);
    }

    @Test
    void the_lowest_height_with_room_to_change_the_tools_is_taken() {
        var drill = window("drill", 300, 400).changedFrom(360);
        var reamer = window("ream", 310, 420).changedFrom(500);

        assertThat(KneeHeights.fewest(List.of(drill)).get(0).chosen()).isEqualTo(360);
        assertThat(KneeHeights.fewest(List.of(reamer)).get(0).chosen()).isEqualTo(310);
        assertThat(KneeHeights.fewest(List.of(drill, reamer)).get(0).chosen()).isEqualTo(360);
    }

    @Test
    void a_closed_window_is_refused_by_name() {
        var closed = new KneeWindow("bore", 400, 387, 400, Bound.QUILL_STROKE);

        assertThatThrownBy(() -> KneeHeights.fewest(List.of(closed)))
                .hasMessageContaining("bore")
                .hasMessageContaining("13.0 mm");
    }

    @Test
    void no_windows_ask_for_no_height() {
        assertThat(KneeHeights.fewest(List.of())).isEmpty();
    }

    /** The spot drill serves up to 280; the drill wants 300 at least: 20 further out, and one height serves both. */
    @Test
    void a_tool_set_out_further_saves_a_height_by_no_more_than_it_takes() {
        var spot = window("spot", 170, 280);
        var drill = window("drill", 300, 400);
        var windows = List.of(spot, drill);

        assertThat(KneeHeights.setOut(windows, Map.of("spot", 25.0))).isEqualTo(Map.of("spot", 20.0));
        assertThat(KneeHeights.setOut(windows, Map.of("spot", 19.0))).isEmpty();
        assertThat(KneeHeights.setOut(windows, Map.of("drill", 200.0))).isEmpty();
        assertThat(KneeHeights.setOut(List.of(window("spot", 170, 310), drill), Map.of("spot", 25.0)))
                .isEmpty();
    }

    /** Set out as it is said, every tool moves its window up by that, and no more heights are needed than before. */
    @Test
    void tools_set_out_as_said_need_fewer_heights() {
        Rounds.each(32, (random, round) -> {
            var windows = windows(random);
            Map<String, Double> more = new LinkedHashMap<>();
            windows.forEach(window -> more.put(window.operation(), (double) random.nextInt(12)));
            var out = KneeHeights.setOut(windows, more);
            var set = windows.stream()
                    .map(window -> {
                        double by = out.getOrDefault(window.operation(), 0.0);
                        return window(window.operation(), window.low() + by, window.high() + by);
                    })
                    .toList();

            out.forEach((operation, by) -> assertThat(by).isPositive().isLessThanOrEqualTo(more.get(operation)));
            int before = KneeHeights.fewest(windows).size();
            int after = KneeHeights.fewest(set).size();
            if (out.isEmpty()) {
                assertThat(after).isEqualTo(before);
            } else {
                assertThat(after).isLessThan(before);
            }
        });
    }

    /** A quill with more stroke only widens windows upwards. */
    @Test
    void more_stroke_never_needs_more_knee_heights() {
        Rounds.each(33, (random, round) -> {
            List<HeightsOfUse> uses = uses(random);
            double stroke = random.nextDouble(40, 130);
            var shorter = new NoseRange(0, 900, stroke);
            var longer = new NoseRange(0, 900, stroke + random.nextDouble(0, 60));
            var open = uses.stream()
                    .filter(use -> KneeWindow.of(use, shorter).isOpen())
                    .toList();

            assertThat(heights(open, longer)).isLessThanOrEqualTo(heights(open, shorter));
        });
    }

    private static int heights(List<HeightsOfUse> uses, NoseRange machine) {
        return KneeHeights.fewest(
                        uses.stream().map(use -> KneeWindow.of(use, machine)).toList())
                .size();
    }

    private static List<HeightsOfUse> uses(RandomGenerator random) {
        List<HeightsOfUse> uses = new ArrayList<>();
        int count = random.nextInt(1, 9);
        for (int i = 0; i < count; i++) {
            double deepest = random.nextDouble(80, 160);
            double crossing = deepest + random.nextDouble(10, 60);
            double projection = random.nextDouble(20, 250);
            uses.add(
                    i % 3 == 0
                            ? HeightsOfUse.byKnee("o" + i, projection, crossing, deepest)
                            : HeightsOfUse.byQuill("o" + i, projection, crossing, deepest));
        }
        return uses;
    }

    /** Oracle: the smallest set of upper ends that meets every window, by going through all sets. */
    @Test
    void no_fewer_heights_serve_all_operations() {
        Rounds.each(31, (random, round) -> {
            var windows = windows(random);
            var heights = KneeHeights.fewest(windows);

            assertThat(heights).hasSize(fewestByAllSets(windows));
            assertThat(heights.stream().flatMap(height -> height.windows().stream()))
                    .containsExactlyInAnyOrderElementsOf(windows);
            assertThat(heights).allSatisfy(height -> {
                assertThat(height.chosen()).isBetween(height.low(), height.high());
                assertThat(height.windows()).allMatch(window -> window.holds(height.chosen()));
            });
        });
    }

    private static int fewestByAllSets(List<KneeWindow> windows) {
        int fewest = windows.size();
        for (int set = 0; set < 1 << windows.size(); set++) {
            if (Integer.bitCount(set) < fewest && meets(windows, set)) {
                fewest = Integer.bitCount(set);
            }
        }
        return fewest;
    }

    private static boolean meets(List<KneeWindow> windows, int set) {
        return windows.stream().allMatch(window -> {
            for (int i = 0; i < windows.size(); i++) {
                if ((set & 1 << i) != 0 && window.holds(windows.get(i).high())) {
                    return true;
                }
            }
            return false;
        });
    }

    /** Whole numbers, so that ends coincide often; every third window is a single height. */
    private static List<KneeWindow> windows(RandomGenerator random) {
        List<KneeWindow> windows = new ArrayList<>();
        int count = random.nextInt(10);
        for (int i = 0; i < count; i++) {
            int low = random.nextInt(40);
            int width = i % 3 == 0 ? 0 : random.nextInt(15);
            windows.add(window("o" + i, low, low + width).changedFrom(random.nextInt(60)));
        }
        return windows;
    }

    private static KneeWindow window(String operation, double low, double high) {
        return new KneeWindow(operation, low, high, low, Bound.OPEN);
    }
}

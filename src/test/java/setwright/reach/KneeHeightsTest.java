package setwright.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
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

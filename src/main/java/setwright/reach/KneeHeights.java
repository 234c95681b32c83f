package setwright.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** The fewest knee heights that serve a set of operations. */
public final class KneeHeights {
    public static final Procedure FEWEST = new Procedure(
            "knee heights",
            List.of(
                    "sort the windows of the operations by their upper ends",
                    "the upper end of the first one not served is a knee height; it serves every window that holds it",
                    "go on with the next one not served",
                    "of the heights that serve a group alike, take the lowest that leaves room to change its tools"),
            Unit.NONE,
            Source.of("computed: intervals stabbed by their upper ends, which is known to take the fewest points"));

    private KneeHeights() {}

    /**
     * Lowest first; each operation stands with one height, in the order given.
     *
     * @throws IllegalArgumentException where a window is closed
     */
    public static List<KneeHeight> fewest(List<KneeWindow> windows) {
        requireOpen(windows);
        List<KneeWindow> left = new ArrayList<>(windows);
        List<KneeHeight> heights = new ArrayList<>();
        while (!left.isEmpty()) {
            double height = left.stream().mapToDouble(KneeWindow::high).min().orElseThrow();
            List<KneeWindow> served =
                    left.stream().filter(window -> window.holds(height)).toList();
            left.removeIf(window -> window.holds(height));
            heights.add(KneeHeight.shared(served));
        }
        heights.sort(Comparator.comparingDouble(KneeHeight::chosen));
        return List.copyOf(heights);
    }

    /**
     * How much further out each tool is to be set so that fewer heights serve all, by operation; empty where that saves
     * none.
     *
     * @param more how much further out each tool may be set, by operation, mm
     */
    public static Map<String, Double> setOut(List<KneeWindow> windows, Map<String, Double> more) {
        List<KneeHeight> longer = fewest(windows.stream()
                .map(window -> window.reaching(more.getOrDefault(window.operation(), 0.0)))
                .toList());
        Map<String, Double> out = new LinkedHashMap<>();
        if (longer.size() < fewest(windows).size()) {
            for (KneeHeight height : longer) {
                for (KneeWindow window : height.windows()) {
                    double may = more.getOrDefault(window.operation(), 0.0);
                    double lacking = height.low() - (window.high() - may);
                    if (lacking > 0) {
                        out.put(window.operation(), lacking);
                    }
                }
            }
        }
        return out;
    }

    private static void requireOpen(List<KneeWindow> windows) {
        for (KneeWindow window : windows) {
            if (!window.isOpen()) {
                throw new IllegalArgumentException(
                        "No knee height serves " + window.operation() + "; " + window.missing() + " mm are missing.");
            }
        }
    }
}

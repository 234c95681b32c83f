package setwright.reach;

import java.util.List;

/**
 * One knee height and the operations that share it; heights of the nose over the table with the quill in, millimetres.
 *
 * @param low lowest height that serves all of them
 * @param high highest height that serves all of them
 * @param chosen the lowest of these that leaves room to change the tools over the hole, as far as any leaves it
 */
public record KneeHeight(double low, double high, double chosen, List<KneeWindow> windows) {
    public KneeHeight {
        windows = List.copyOf(windows);
    }

    static KneeHeight shared(List<KneeWindow> windows) {
        double low = windows.stream().mapToDouble(KneeWindow::low).max().orElseThrow();
        double high = windows.stream().mapToDouble(KneeWindow::high).min().orElseThrow();
        double chosen = windows.stream()
                .mapToDouble(KneeWindow::changeFrom)
                .filter(from -> from <= high)
                .reduce(low, Math::max);
        return new KneeHeight(low, high, chosen, windows);
    }
}

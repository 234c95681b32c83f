package setwright.file.json;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers problems; those beyond {@link Limits#PROBLEMS} are only counted. */
public final class Problems {
    private static final Comparator<Problem> BY_PLACE =
            Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column);

    private final List<Problem> kept = new ArrayList<>();
    private int more;

    public void add(Place at, String path, String message) {
        add(Problem.at(at, path, message));
    }

    public void add(Problem problem) {
        if (full()) {
            more++;
        } else {
            kept.add(problem);
        }
    }

    public void addAll(List<Problem> problems) {
        problems.forEach(this::add);
    }

    /** Whether further problems are only counted, so that no words need be found for them. */
    public boolean full() {
        return kept.size() >= Limits.PROBLEMS;
    }

    public boolean none() {
        return kept.isEmpty();
    }

    /** By line and column; the last one says how many more there are. */
    public List<Problem> inOrder() {
        List<Problem> all = new ArrayList<>(kept);
        all.sort(BY_PLACE);
        if (more > 0) {
            all.add(Problem.whole(more + " more problems were found; these come first."));
        }
        return List.copyOf(all);
    }
}

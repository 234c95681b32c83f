package setwright.cutting;

import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;

/** Which limit binds first, and how far a choice can go before it does. */
public final class Limits {
    private static final int HALVINGS = 30;

    private Limits() {}

    /** The limit that is used up most; of equals the one that stands first among the names. */
    public static Limit governing(List<Limit> limits) {
        return limits.stream()
                .max(Comparator.comparingDouble(Limit::used).thenComparing(Limit::name, Comparator.reverseOrder()))
                .orElseThrow(() -> new IllegalArgumentException("No limits: nothing can govern."));
    }

    /**
     * The largest choice at which no limit is broken, where every limit is used up more the larger the choice.
     *
     * @param range what can be chosen at all; where its largest choice breaks nothing it is the answer
     * @param limits the limits at a choice
     */
    public static Largest largest(Range range, DoubleFunction<List<Limit>> limits) {
        if (!governing(limits.apply(range.greatest())).broken()) {
            return new Largest(range.greatest(), governing(limits.apply(range.greatest())));
        }
        double holds = range.least();
        double breaks = range.greatest();
        for (int i = 0; i < HALVINGS && breaks - holds > range.closeness(); i++) {
            double middle = (holds + breaks) / 2;
            if (governing(limits.apply(middle)).broken()) {
                breaks = middle;
            } else {
                holds = middle;
            }
        }
        return new Largest(holds, governing(limits.apply(breaks)));
    }

    /**
     * What can be chosen.
     *
     * @param closeness how close below the true limit the answer may stop
     */
    public record Range(double least, double greatest, double closeness) {}

    /**
     * @param choice the largest that breaks nothing; the least of the range where even that breaks something
     * @param governing the limit that stands in the way of a larger one, as it is used up just beyond
     */
    public record Largest(double choice, Limit governing) {}
}

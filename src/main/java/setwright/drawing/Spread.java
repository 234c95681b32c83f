package setwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Moves things along a line no more than needed until they stand apart. */
public final class Spread {
    private Spread() {}

    /**
     * The places, in rising order, moved so that each is at least so far above the one before; the sum of the squared
     * moves is the least that can be. (The pool of adjacent violators of isotonic regression.)
     */
    public static List<Double> apart(List<Double> wanted, double least) {
        List<Pool> pools = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            Pool pool = new Pool(wanted.get(i) - i * least, 1);
            while (!pools.isEmpty() && pools.get(pools.size() - 1).mean() > pool.mean()) {
                pool = pools.remove(pools.size() - 1).and(pool);
            }
            pools.add(pool);
        }
        List<Double> placed = new ArrayList<>();
        for (Pool pool : pools) {
            for (int i = 0; i < pool.count(); i++) {
                placed.add(pool.mean() + placed.size() * least);
            }
        }
        return placed;
    }

    /** The same, and none below {@code low} or above {@code high} as long as there is room for all. */
    public static List<Double> apart(List<Double> wanted, double least, double low, double high) {
        List<Double> apart = apart(wanted, least);
        List<Double> placed = new ArrayList<>();
        int count = apart.size();
        for (int i = 0; i < count; i++) {
            double most = high - (count - 1 - i) * least;
            placed.add(Math.max(low + i * least, Math.min(most, apart.get(i))));
        }
        return placed;
    }

    /** Things that were pushed together. */
    private record Pool(double mean, int count) {
        Pool and(Pool other) {
            int both = count + other.count;
            return new Pool((mean * count + other.mean * other.count) / both, both);
        }
    }
}

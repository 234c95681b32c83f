package setwright.holding.balance;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** The bases in which earlier loads ended, newest first: the next load of a turn or a path mostly starts well in one. */
final class Trail {
    private static final int LENGTH = 8;

    private final Deque<Basis> bases = new ArrayDeque<>();

    /** A basis in which this load, a column of length one, is balanced to some part already. */
    Optional<Basis> start(double[] load) {
        for (Basis basis : bases) {
            if (basis.alsoBalances(load)) {
                return Optional.of(basis.with(load));
            }
        }
        return Optional.empty();
    }

    void add(Basis basis) {
        bases.addFirst(basis);
        if (bases.size() > LENGTH) {
            bases.removeLast();
        }
    }
}

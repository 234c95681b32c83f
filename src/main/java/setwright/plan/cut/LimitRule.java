package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import setwright.cutting.LimitName;

/**
 * How far one choice of an operation can go before each limit binds, the other choices held.
 *
 * @param now where it stands; mm, of the feed mm/s
 * @param binds by the size of the choice, smallest first; a limit that does not bind within reach is not there
 */
public record LimitRule(Choice choice, double now, List<Binds> binds) {
    public LimitRule {
        binds = List.copyOf(binds);
    }

    /** What can be chosen of a cut. */
    public enum Choice {
        DEPTH,
        WIDTH,
        FEED,
        STICK_OUT
    }

    /**
     * Where a limit binds.
     *
     * @param from whether it binds from there on upward; else from there on downward
     */
    public record Binds(LimitName limit, double at, boolean from) {}

    /** What stands in the way of a larger choice: the first that binds from somewhere on. */
    public Optional<Binds> first() {
        return binds.stream().filter(Binds::from).findFirst();
    }
}

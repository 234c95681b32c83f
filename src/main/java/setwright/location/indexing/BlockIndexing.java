package setwright.location.indexing;

import java.util.List;
import java.util.Optional;

/** Several divisions at every move, the work round several times: heat and wear spread, and other circles serve. */
public final class BlockIndexing {
    /**
     * A move over several divisions.
     *
     * @param steps divisions a move, which is how often the work goes round
     */
    public record Way(int steps, CrankMove move) {}

    private BlockIndexing() {}

    /**
     * The best exact move over so many divisions.
     *
     * @throws IllegalArgumentException where some divisions are never reached
     */
    public static Optional<Way> of(int divisions, int steps, IndexHead head) {
        Divisions.require(divisions);
        long common = Divisions.common(steps, divisions);
        if (common != 1) {
            throw new IllegalArgumentException("Steps of " + steps + " reach only " + divisions / common + " of the "
                    + divisions + " divisions; the two may have no common factor.");
        }
        List<CrankMove> exact = PlainIndexing.exact(head.turns(divisions, steps), head);
        return exact.stream().findFirst().map(move -> new Way(steps, move));
    }
}

package setwright.plan.choose;

import java.util.List;
import java.util.stream.Stream;
import setwright.job.Holding;

/**
 * A way to hold the part of a set-up with what the shop owns.
 *
 * @param text in the words of the shop: {@code 6 in vise, jaws inboard, firm}
 * @param holding as it is written into the job
 * @param against what speaks against it without any working; empty where it is worth working out
 * @param doubts what a good hand would not like about it, and no check looks at
 * @param now whether the set-up is held so
 */
public record Arrangement(String text, Holding holding, List<String> against, List<String> doubts, boolean now) {
    public Arrangement {
        against = List.copyOf(against);
        doubts = List.copyOf(doubts);
    }

    /** One that nothing is doubted about. */
    Arrangement(String text, Holding holding, List<String> against, boolean now) {
        this(text, holding, against, List.of(), now);
    }

    /** The same with a doubt more. */
    Arrangement doubted(String doubt) {
        return new Arrangement(
                text,
                holding,
                against,
                Stream.concat(doubts.stream(), Stream.of(doubt)).toList(),
                now);
    }

    public boolean worthTrying() {
        return against.isEmpty();
    }
}

package setwright.window.model;

import java.util.List;
import java.util.stream.Stream;

/**
 * A folded line of a card, two rows at most and four figures at most.
 *
 * @param key what it is chosen by
 * @param what first row
 * @param pace first row, at the right: speed, feed, time
 * @param with second row: with what, how far out
 */
public record Line(String key, List<Span> what, List<Span> pace, List<Span> with, Badge badge) {
    public Line {
        what = List.copyOf(what);
        pace = List.copyOf(pace);
        with = List.copyOf(with);
    }

    /** As one sentence, for those who hear the screen. */
    public String spoken() {
        return String.join(
                ", ",
                Stream.of(Span.spoken(what), Span.spoken(with), Span.spoken(pace), badge.text())
                        .filter(text -> !text.isEmpty())
                        .toList());
    }
}

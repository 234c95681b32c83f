package setwright.window.model;

import java.util.List;

/**
 * The card of the chosen set-up.
 *
 * @param chosen key of the line that is unfolded; empty where none is
 */
public record Card(List<Line> lines, String chosen, Unfolded unfolded) {
    public Card {
        lines = List.copyOf(lines);
    }

    Card ruled(List<LimitRule> rules) {
        return new Card(lines, chosen, unfolded.ruled(rules));
    }

    public static final Card EMPTY = new Card(List.of(), "", Unfolded.NOTHING);
}

package setwright.window.model;

import java.util.List;
import setwright.quantity.Working;

/**
 * A worked figure beside the fields.
 *
 * @param key what it is opened by
 * @param said a few words behind the number: the band, the limit; may be empty
 * @param working how it was worked out; empty while it is closed, or where it has none
 */
public record Figure(String key, String name, String printed, String said, boolean opens, List<Working.Line> working) {
    public Figure {
        working = List.copyOf(working);
    }

    Figure printedAs(String other) {
        return new Figure(key, name, other, said, opens, working);
    }
}

package setwright.job.note;

import java.util.List;

/** Parts of messages about a note. */
final class Saying {
    private Saying() {}

    /** A piece and where it stands: {@code "foo" at place 7}. */
    static String at(Piece piece) {
        return "\"" + piece.text() + "\" at place " + (piece.from() + 1);
    }

    /** {@code a, b and c}. */
    static String list(List<String> things) {
        int last = things.size() - 1;
        return last < 1
                ? String.join("", things)
                : String.join(", ", things.subList(0, last)) + " and " + things.get(last);
    }
}

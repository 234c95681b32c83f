package setwright.window.model;

/**
 * The one sign of severity: a square with its count and word.
 *
 * @param count how many; 0 where nothing was found
 * @param words the severity's word
 */
public record Badge(Square square, int count, String words) {
    public static final Badge NONE = new Badge(Square.NONE, 0, "");

    /** Filled: do not run; half on the diagonal: caution; outline: note. */
    public enum Square {
        NONE,
        OUTLINE,
        HALF,
        FILLED
    }

    /** For instance {@code 2 cautions}; empty where nothing was found. */
    public String text() {
        return square == Square.NONE ? "" : count + " " + words;
    }
}

package setwright.file.json;

/** Where something stands in a text: line and column count from 1, the column in characters. */
public record Place(int line, int column) {
    /** The place of what was never read from a text, and of problems with a file as a whole. */
    public static final Place NONE = new Place(0, 0);

    /** The place of a character of a text. */
    static Place of(CharSequence text, int offset) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < offset; i++) {
            boolean ends = text.charAt(i) == '\n';
            line += ends ? 1 : 0;
            column = ends ? 1 : column + 1;
        }
        return new Place(line, column);
    }

    /** In words, for a message that points at a second place. */
    public String words() {
        return "line " + line + ", column " + column;
    }
}

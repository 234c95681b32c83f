package setwright.command;

/** Text in lines of at most 100 columns. */
final class Wrapped {
    static final int COLUMNS = 100;

    private Wrapped() {}

    /** The first line behind its head, all further ones behind as many blanks. */
    static String behind(String head, String text) {
        String indent = " ".repeat(head.codePointCount(0, head.length()));
        StringBuilder all = new StringBuilder();
        StringBuilder line = new StringBuilder(head);
        boolean fresh = true;
        for (String word : text.strip().split("\\s+")) {
            if (!fresh && length(line) + 1 + word.codePointCount(0, word.length()) > COLUMNS) {
                all.append(line.toString().stripTrailing()).append("\n");
                line = new StringBuilder(indent);
                fresh = true;
            }
            line.append(fresh ? "" : " ").append(word);
            fresh = false;
        }
        return all.append(line.toString().stripTrailing()).append("\n").toString();
    }

    private static int length(StringBuilder line) {
        return line.codePointCount(0, line.length());
    }
}

package setwright.window.view.part;

/** Text for labels that wrap: put into their small HTML, or broken at a width. */
public final class Markup {
    private Markup() {}

    public static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** A line broken between words, what follows indented a little more than its beginning. */
    public static String broken(String line, int columns) {
        String indent = line.substring(0, line.length() - line.stripLeading().length());
        StringBuilder text = new StringBuilder(indent);
        int used = indent.length();
        for (String word : line.strip().split(" ")) {
            boolean first = used == indent.length();
            if (!first && used + 1 + word.length() > columns) {
                text.append("\n").append(indent).append("    ").append(word);
                used = indent.length() + 4 + word.length();
            } else {
                text.append(first ? "" : " ").append(word);
                used += (first ? 0 : 1) + word.length();
            }
        }
        return text.toString();
    }
}

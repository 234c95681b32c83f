package setwright.file.json;

import java.util.List;
import java.util.stream.Stream;

/** Writes a tree as text: two spaces, line feeds; what is flat and short stands in one line. */
final class TreeText {
    private static final int WIDTH = 100;

    /** An object of texts, numbers and lists of them is flat. */
    private static final int FLAT = 2;

    private final StringBuilder out = new StringBuilder();
    private final List<String> oneLineEach;

    /** @param oneLineEach keys of lists whose items take one line each, however long */
    TreeText(List<String> oneLineEach) {
        this.oneLineEach = oneLineEach;
    }

    static String oneLine(Tree tree) {
        TreeText text = new TreeText(List.of());
        text.line(tree);
        return text.out.toString();
    }

    String lines(Tree tree) {
        lines(tree, "", false);
        return out.append('\n').toString();
    }

    private void line(Tree tree) {
        switch (tree.kind()) {
            case OBJECT -> {
                String comma = "{";
                for (Tree.Member member : ((Tree.JsonObject) tree).members()) {
                    out.append(comma).append(Quoted.json(member.key())).append(": ");
                    line(member.value());
                    comma = ", ";
                }
                out.append(comma.equals("{") ? "{}" : "}");
            }
            case ARRAY -> {
                String comma = "[";
                for (Tree item : ((Tree.JsonArray) tree).items()) {
                    out.append(comma);
                    line(item);
                    comma = ", ";
                }
                out.append(comma.equals("[") ? "[]" : "]");
            }
            case TEXT -> out.append(Quoted.json(((Tree.Text) tree).text()));
            case NUMERAL -> out.append(((Tree.Numeral) tree).digits());
            case FLAG -> out.append(((Tree.Flag) tree).value());
            case NOTHING -> out.append("null");
        }
    }

    private void lines(Tree tree, String indent, boolean itemsInOneLine) {
        String line = oneLine(tree);
        if (!itemsInOneLine && depth(tree) <= FLAT && indent.length() + line.length() <= WIDTH) {
            out.append(line);
        } else if (tree instanceof Tree.JsonObject object && !object.members().isEmpty()) {
            members(object, indent);
        } else if (tree instanceof Tree.JsonArray array && !array.items().isEmpty()) {
            items(array, indent, itemsInOneLine);
        } else {
            out.append(line);
        }
    }

    private void members(Tree.JsonObject object, String indent) {
        String comma = "{";
        for (Tree.Member member : object.members()) {
            out.append(comma).append('\n').append(indent).append("  ");
            out.append(Quoted.json(member.key())).append(": ");
            lines(member.value(), indent + "  ", oneLineEach.contains(member.key()));
            comma = ",";
        }
        out.append('\n').append(indent).append('}');
    }

    private void items(Tree.JsonArray array, String indent, boolean inOneLine) {
        String comma = "[";
        for (Tree item : array.items()) {
            out.append(comma).append('\n').append(indent).append("  ");
            if (inOneLine) {
                line(item);
            } else {
                lines(item, indent + "  ", false);
            }
            comma = ",";
        }
        out.append('\n').append(indent).append(']');
    }

    /** How many brackets lie in one another; an empty object or list counts as none. */
    private static int depth(Tree tree) {
        return switch (tree.kind()) {
            case OBJECT -> deepest(((Tree.JsonObject) tree).members().stream().map(Tree.Member::value));
            case ARRAY -> deepest(((Tree.JsonArray) tree).items().stream());
            case TEXT, NUMERAL, FLAG, NOTHING -> 0;
        };
    }

    private static int deepest(Stream<Tree> parts) {
        return parts.mapToInt(part -> 1 + depth(part)).max().orElse(0);
    }
}

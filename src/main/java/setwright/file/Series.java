package setwright.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.file.json.Json;
import setwright.file.json.Problems;
import setwright.file.json.Tree;
import setwright.file.json.Way;
import setwright.file.shape.Checking;
import setwright.file.shape.FormShape;
import setwright.file.shape.Shapes;

/**
 * A regular series of rows, written as one: {@code each} is common to all, and every line of {@code rows} gives the
 * values of {@code columns}. A column that {@code id} or {@code name} names in braces, as in <code>drill-{d}</code>, is
 * put in there and is no key of the row.
 *
 * @param of the kind of every row
 * @param each the keys and values that all rows share
 */
public record Series(String of, String id, String name, Tree each, List<String> columns, List<List<Tree>> rows) {
    static final String KIND = "series";
    static final FormShape SHAPE = Shapes.record(Series.class).as(KIND);

    static boolean is(Tree row) {
        return row instanceof Tree.JsonObject object && object.text("kind").equals(Optional.of(KIND));
    }

    /** The rows that a series stands for, each at the place of its line; none with problems where it is not whole. */
    static List<Tree> expand(Tree tree, String path, Problems problems) {
        Problems own = new Problems();
        SHAPE.check(tree, path, new Checking(own, record -> {}));
        Optional<Series> series = own.none() ? Shapes.bind(SHAPE, tree, Series.class, own) : Optional.empty();
        List<Tree> rows = series.map(whole -> whole.expand((Tree.JsonObject) tree, path, own))
                .orElse(List.of());
        problems.addAll(own.inOrder());
        return rows;
    }

    private List<Tree> expand(Tree.JsonObject tree, String path, Problems problems) {
        if (!(each instanceof Tree.JsonObject common)) {
            problems.add(
                    each.at(), Way.key(path, "each"), "Found " + each.found() + "; accepted here: an object in { }.");
            return List.of();
        }
        List<Tree> lines = ((Tree.JsonArray) tree.get("rows").orElseThrow()).items();
        List<Tree> expanded = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).size() == columns.size()) {
                expanded.add(row(tree, common, (Tree.JsonArray) lines.get(i)));
            } else {
                problems.add(
                        lines.get(i).at(),
                        Way.item(Way.key(path, "rows"), i),
                        "Found " + rows.get(i).size() + " values; accepted here: " + columns.size()
                                + ", one for each column.");
            }
        }
        return expanded;
    }

    private Tree row(Tree.JsonObject tree, Tree.JsonObject common, Tree.JsonArray line) {
        List<Tree.Member> members = new ArrayList<>();
        members.add(new Tree.Member(
                "kind", line.at(), new Tree.Text(tree.get("of").orElseThrow().at(), of)));
        members.add(new Tree.Member("id", line.at(), new Tree.Text(line.at(), filled(id, line))));
        members.add(new Tree.Member("name", line.at(), new Tree.Text(line.at(), filled(name, line))));
        Tree.JsonObject row = new Tree.JsonObject(line.at(), members);
        for (Tree.Member member : common.members()) {
            row = row.with(member.key(), member.value());
        }
        for (int i = 0; i < columns.size(); i++) {
            String blank = blank(columns.get(i));
            if (!id.contains(blank) && !name.contains(blank)) {
                row = row.with(columns.get(i), line.items().get(i));
            }
        }
        return row;
    }

    private String filled(String pattern, Tree.JsonArray line) {
        String filled = pattern;
        for (int i = 0; i < columns.size(); i++) {
            filled = filled.replace(blank(columns.get(i)), words(line.items().get(i)));
        }
        return filled;
    }

    private static String words(Tree value) {
        return value instanceof Tree.Text text ? text.text() : Json.text(value, Json.Layout.ONE_LINE);
    }

    private static String blank(String column) {
        return "{" + column + "}";
    }
}

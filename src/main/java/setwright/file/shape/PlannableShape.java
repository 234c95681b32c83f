package setwright.file.shape;

import java.util.List;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.job.Plannable;

/**
 * A value that may be left to the pencil: the key is left out. Ink is the bare value, a measurement an object that says
 * by whom and when.
 */
public record PlannableShape(Shape each, FormShape measured) implements Shape {
    /** The key of a measured value. */
    static final String MEASURED = "measured";

    @Override
    public String accepted() {
        return each.accepted() + ", or {\"measured\": ..., \"by\": ..., \"at\": ...}; left out, the pencil fills it in";
    }

    @Override
    public List<Found> check(Tree tree, String path, Checking checking) {
        if (!(tree instanceof Tree.JsonObject)) {
            return each.check(tree, path, checking);
        }
        List<Found> whole = measured.check(tree, path, checking);
        return whole.stream()
                .map(found -> (HalfRead) found.value())
                .flatMap(record -> record.all(MEASURED).stream())
                .toList();
    }

    @Override
    public Object bind(Tree tree) {
        if (!(tree instanceof Tree.JsonObject)) {
            return Plannable.inked(each.bind(tree));
        }
        return measured.bind(tree);
    }

    @Override
    public Tree write(Object value) {
        if (value instanceof Plannable.Inked<?> inked) {
            return each.write(inked.value());
        }
        if (value instanceof Plannable.Measured<?>) {
            return measured.write(value);
        }
        throw new IllegalArgumentException("Pencil is left out of a file, not written: " + value + ".");
    }

    @Override
    public Tree schema(Definitions definitions) {
        return Json.object()
                .put("oneOf", Json.array(List.of(each.schema(definitions), measured.inline(definitions))))
                .build();
    }
}

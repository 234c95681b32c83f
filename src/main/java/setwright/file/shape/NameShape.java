package setwright.file.shape;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.file.json.Json;
import setwright.file.json.Tree;

/** One of the constants of an enum, in lower case with hyphens. */
public final class NameShape implements LeafShape {
    private final Map<String, Object> constants = new LinkedHashMap<>();

    NameShape(Class<?> names) {
        for (Object constant : names.getEnumConstants()) {
            constants.put(written(constant), constant);
        }
    }

    static String written(Object constant) {
        return WrittenNames.constant((Enum<?>) constant);
    }

    @Override
    public String accepted() {
        return String.join(", ", constants.keySet()) + " (in double quotes)";
    }

    @Override
    public Object value(Tree tree) {
        if (!(tree instanceof Tree.Text text)) {
            throw Unfit.wanted(accepted(), tree);
        }
        Object constant = constants.get(text.text());
        if (constant == null) {
            throw Unfit.wanted(Closest.to(text.text(), constants.keySet()), accepted(), tree);
        }
        return constant;
    }

    @Override
    public Tree write(Object value) {
        return Json.text(written(value));
    }

    @Override
    public Tree schema(Definitions definitions) {
        return Json.object()
                .put("enum", Json.texts(List.copyOf(constants.keySet())))
                .build();
    }
}

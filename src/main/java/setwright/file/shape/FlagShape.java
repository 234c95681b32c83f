package setwright.file.shape;

import setwright.file.json.Json;
import setwright.file.json.Tree;

/** {@code true} or {@code false}. */
public record FlagShape() implements LeafShape {
    @Override
    public String accepted() {
        return "true or false, without quotes";
    }

    @Override
    public Object value(Tree tree) {
        if (tree instanceof Tree.Flag flag) {
            return flag.value();
        }
        throw Unfit.wanted(accepted(), tree);
    }

    @Override
    public Tree write(Object value) {
        return Json.flag((Boolean) value);
    }

    @Override
    public Tree schema(Definitions definitions) {
        return Json.object().put("type", "boolean").build();
    }
}

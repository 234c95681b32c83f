package setwright.file.shape;

import setwright.file.json.Json;
import setwright.file.json.Tree;

/** Plain words, or an id. */
public record WordsShape() implements LeafShape {
    @Override
    public String accepted() {
        return "a text in double quotes";
    }

    @Override
    public Object value(Tree tree) {
        if (tree instanceof Tree.Text text) {
            return text.text();
        }
        throw Unfit.wanted(accepted(), tree);
    }

    @Override
    public Tree write(Object value) {
        return Json.text((String) value);
    }

    @Override
    public Tree schema(Definitions definitions) {
        return Json.object().put("type", "string").build();
    }
}

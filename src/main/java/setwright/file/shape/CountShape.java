package setwright.file.shape;

import setwright.file.json.Json;
import setwright.file.json.Tree;

/** A count: a whole number, without quotes, point or exponent. */
public record CountShape() implements LeafShape {
    @Override
    public String accepted() {
        return "a whole number without quotes";
    }

    @Override
    public Object value(Tree tree) {
        if (tree instanceof Tree.Numeral numeral) {
            return numeral.whole().orElseThrow(() -> Unfit.wanted(accepted(), tree));
        }
        throw Unfit.wanted(accepted(), tree);
    }

    @Override
    public Tree write(Object value) {
        return Json.number((int) (Integer) value);
    }

    @Override
    public Tree schema(Definitions definitions) {
        return Json.object().put("type", "integer").build();
    }
}

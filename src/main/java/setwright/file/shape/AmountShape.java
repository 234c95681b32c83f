package setwright.file.shape;

import setwright.file.json.Json;
import setwright.file.json.Quoted;
import setwright.file.json.Tree;
import setwright.quantity.Typed;

/** A quantity: one text as typed, number and unit together. */
public record AmountShape(Amount amount) implements LeafShape {
    @Override
    public String accepted() {
        return amount.words() + " in double quotes, such as " + Quoted.of(amount.example());
    }

    @Override
    public Object value(Tree tree) {
        if (!(tree instanceof Tree.Text text)) {
            throw Unfit.wanted(accepted(), tree);
        }
        try {
            return amount.read(text.text());
        } catch (IllegalArgumentException e) {
            throw new Unfit(tree.at(), String.valueOf(e.getMessage()));
        }
    }

    @Override
    public Tree write(Object value) {
        return Json.text(((Typed<?>) value).text());
    }

    @Override
    public Tree schema(Definitions definitions) {
        return definitions.reference(
                WrittenNames.hyphened(amount.type().getSimpleName()),
                () -> Json.object()
                        .put("type", "string")
                        .put("pattern", "[0-9#A-Z]")
                        .put("description", accepted())
                        .build());
    }
}

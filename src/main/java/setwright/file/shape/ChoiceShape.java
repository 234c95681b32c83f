package setwright.file.shape;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.file.json.Json;
import setwright.file.json.Quoted;
import setwright.file.json.Tree;
import setwright.file.json.Way;

/** A sealed family: an object whose {@code kind} says which record it is. */
public final class ChoiceShape implements Shape {
    private final Class<?> family;
    private final Map<String, FormShape> forms = new LinkedHashMap<>();

    ChoiceShape(Class<?> family, List<FormShape> forms) {
        this.family = family;
        forms.forEach(form -> this.forms.put(form.written(), form));
    }

    @Override
    public String accepted() {
        return "an object whose \"kind\" is one of " + String.join(", ", forms.keySet());
    }

    @Override
    public List<Found> check(Tree tree, String path, Checking checking) {
        if (!(tree instanceof Tree.JsonObject object)) {
            checking.problem(tree.at(), path, Unfit.wanted(accepted(), tree).getMessage());
            return List.of();
        }
        FormShape form = form(object, Way.key(path, FormShape.KIND), checking);
        return form == null ? kindUnknown(object, path, checking) : form.check(tree, path, checking);
    }

    /** Its id alone is passed on, so that nothing that refers to it is reported as well. */
    private List<Found> kindUnknown(Tree.JsonObject object, String path, Checking checking) {
        Map<String, List<Found>> values = new LinkedHashMap<>();
        object.get("id")
                .filter(Tree.Text.class::isInstance)
                .map(id -> new Found(((Tree.Text) id).text(), Way.key(path, "id"), id))
                .ifPresent(id -> values.put("id", List.of(id)));
        checking.watch().pass(new HalfRead(family, path, object, values));
        return List.of();
    }

    private @Nullable FormShape form(Tree.JsonObject object, String path, Checking checking) {
        Optional<Tree> kind = object.get(FormShape.KIND);
        if (kind.isEmpty()) {
            checking.problem(
                    object.at(),
                    path,
                    "The key \"kind\" is missing in this object; accepted there: " + String.join(", ", forms.keySet())
                            + ".");
            return null;
        }
        String written = object.text(FormShape.KIND).orElse("");
        FormShape form = forms.get(written);
        if (form != null) {
            return form;
        }
        Optional<String> close = Closest.to(written, forms.keySet());
        checking.problem(kind.get().at(), path, unknown(kind.get(), close));
        return close.map(forms::get).orElse(null);
    }

    private String unknown(Tree kind, Optional<String> close) {
        return "Found " + kind.found() + ", which is no kind here; "
                + close.map(name -> "write " + Quoted.of(name) + ".")
                        .orElseGet(() -> "the kinds are " + String.join(", ", forms.keySet()) + ".");
    }

    @Override
    public Object bind(Tree tree) {
        String written = ((Tree.JsonObject) tree).text(FormShape.KIND).orElse("");
        FormShape form = forms.get(written);
        if (form == null) {
            throw Unfit.wanted(accepted(), tree);
        }
        return form.bind(tree);
    }

    @Override
    public Tree write(Object value) {
        return forms.values().stream()
                .filter(form -> form.type().isInstance(value))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException(value.getClass() + " is none of " + forms.keySet() + "."))
                .write(value);
    }

    @Override
    public Tree schema(Definitions definitions) {
        List<Tree> each =
                forms.values().stream().map(form -> form.schema(definitions)).toList();
        return Json.object().put("oneOf", Json.array(each)).build();
    }
}

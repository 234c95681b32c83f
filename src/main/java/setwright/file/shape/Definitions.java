package setwright.file.shape;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import setwright.file.json.Json;
import setwright.file.json.Place;
import setwright.file.json.Tree;

/** The definitions that a schema refers to, each made once. */
public final class Definitions {
    private final Map<String, Tree> byName = new LinkedHashMap<>();

    /** A reference to the definition of that name, which is made where it is not there yet. */
    Tree reference(String name, Supplier<Tree> definition) {
        if (!byName.containsKey(name)) {
            byName.put(name, Json.nothing());
            byName.put(name, definition.get());
        }
        return Json.object().put("$ref", "#/$defs/" + name).build();
    }

    public Tree.JsonObject all() {
        return new Tree.JsonObject(
                Place.NONE,
                byName.entrySet().stream()
                        .map(entry -> new Tree.Member(entry.getKey(), Place.NONE, entry.getValue()))
                        .toList());
    }
}

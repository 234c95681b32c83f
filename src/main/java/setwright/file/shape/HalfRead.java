package setwright.file.shape;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import setwright.file.json.Tree;

/**
 * A record in a file of which some values may be missing or not readable.
 *
 * @param type the record's class; its family where the kind is not known
 * @param values what was found whole under each key: none, one, or every item of a list; records as {@code HalfRead}
 */
public record HalfRead(Class<?> type, String path, Tree.JsonObject tree, Map<String, List<Shape.Found>> values) {
    public List<Shape.Found> all(String key) {
        return values.getOrDefault(key, List.of());
    }

    public Optional<Shape.Found> one(String key) {
        return all(key).stream().findFirst();
    }

    /** Whether the file has the key at all, with whatever value. */
    public boolean has(String key) {
        return values.containsKey(key);
    }
}

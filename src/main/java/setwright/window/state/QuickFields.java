package setwright.window.state;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What stands in the fields of the quick check: ids of rows, and texts as they were typed. An empty text is left to the
 * pencil, or to what is usual.
 */
public record QuickFields(Map<QuickField, String> texts) {
    public static final QuickFields USUAL = new QuickFields(Map.of());

    public QuickFields {
        Map<QuickField, String> ordered = new EnumMap<>(QuickField.class);
        texts.forEach((field, text) -> {
            if (!text.isBlank()) {
                ordered.put(field, text);
            }
        });
        texts = Collections.unmodifiableMap(ordered);
    }

    public String text(QuickField field) {
        return texts.getOrDefault(field, "");
    }

    public QuickFields with(QuickField field, String text) {
        Map<QuickField, String> changed = new EnumMap<>(QuickField.class);
        changed.putAll(texts);
        changed.put(field, text);
        return new QuickFields(changed);
    }
}

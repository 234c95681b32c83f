package setwright.file.json;

import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.core.TokenStreamContext;

/** Paths as problems name them: keys joined by slashes, places in a list in brackets. */
public final class Way {
    private Way() {}

    /** One step further, to a key. */
    public static String key(String path, String key) {
        return path.isEmpty() ? key : path + "/" + key;
    }

    /** One step further, to a place in a list. */
    public static String item(String path, int index) {
        return path + "[" + index + "]";
    }

    static String to(JsonParser parser) {
        return to(parser.streamReadContext());
    }

    private static String to(@Nullable TokenStreamContext context) {
        if (context == null || context.inRoot()) {
            return "";
        }
        String outer = to(context.getParent());
        if (context.inArray()) {
            return item(outer, Math.max(0, context.getCurrentIndex()));
        }
        String name = context.currentName();
        return name == null ? outer : key(outer, name);
    }
}

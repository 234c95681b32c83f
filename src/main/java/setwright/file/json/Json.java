package setwright.file.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Builds, writes and reads JSON: keys in the order given, doubles in full, never NaN or infinite. */
public final class Json {
    private Json() {}

    /** How a text is laid out. */
    public enum Layout {
        PRETTY,
        ONE_LINE
    }

    public static TreeRead read(String text) {
        return TreeReader.read(text);
    }

    /** {@link Layout#PRETTY} ends with a line feed, {@link Layout#ONE_LINE} does not. */
    public static String text(Tree tree, Layout layout) {
        return switch (layout) {
            case PRETTY -> new TreeText(List.of()).lines(tree);
            case ONE_LINE -> TreeText.oneLine(tree);
        };
    }

    /** Pretty, but items of lists under these keys take one line each, however long. */
    public static String prettyText(Tree tree, List<String> oneLineEach) {
        return new TreeText(oneLineEach).lines(tree);
    }

    public static Tree text(String text) {
        return new Tree.Text(Place.NONE, text);
    }

    public static Tree number(long number) {
        return new Tree.Numeral(Place.NONE, Long.toString(number));
    }

    /** @throws IllegalArgumentException for NaN and infinities, which JSON cannot hold */
    public static Tree number(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("JSON holds finite numbers only, not " + number + ".");
        }
        return new Tree.Numeral(Place.NONE, Double.toString(number + 0.0));
    }

    public static Tree flag(boolean value) {
        return new Tree.Flag(Place.NONE, value);
    }

    public static Tree nothing() {
        return new Tree.Nothing(Place.NONE);
    }

    public static Tree array(List<? extends Tree> items) {
        return new Tree.JsonArray(Place.NONE, List.copyOf(items));
    }

    public static Tree texts(List<String> texts) {
        return array(texts.stream().map(Json::text).toList());
    }

    public static ObjectBuilder object() {
        return new ObjectBuilder();
    }

    /** An object key by key, in the order in which they are put. */
    public static final class ObjectBuilder {
        private final Map<String, Tree.Member> members = new LinkedHashMap<>();

        private ObjectBuilder() {}

        /** @throws IllegalArgumentException where the key was put before */
        public ObjectBuilder put(String key, @Nullable Tree value) {
            Tree tree = value == null ? nothing() : value;
            if (members.putIfAbsent(key, new Tree.Member(key, Place.NONE, tree)) != null) {
                throw new IllegalArgumentException("The key " + key + " is put twice into one object.");
            }
            return this;
        }

        public ObjectBuilder put(String key, ObjectBuilder value) {
            return put(key, value.build());
        }

        public ObjectBuilder put(String key, @Nullable String text) {
            return put(key, text == null ? nothing() : text(text));
        }

        public ObjectBuilder put(String key, double number) {
            return put(key, number(number));
        }

        public ObjectBuilder put(String key, @Nullable Double number) {
            return put(key, number == null ? nothing() : number(number));
        }

        public ObjectBuilder put(String key, long number) {
            return put(key, number(number));
        }

        public ObjectBuilder put(String key, int number) {
            return put(key, number((long) number));
        }

        public ObjectBuilder put(String key, boolean value) {
            return put(key, flag(value));
        }

        public ObjectBuilder putNull(String key) {
            return put(key, nothing());
        }

        public Tree.JsonObject build() {
            return new Tree.JsonObject(Place.NONE, List.copyOf(members.values()));
        }
    }
}

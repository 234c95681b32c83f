package setwright.file.shape;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.file.json.Json;
import setwright.file.json.Place;
import setwright.file.json.Quoted;
import setwright.file.json.Tree;
import setwright.file.json.Way;
import setwright.job.Plannable;

/**
 * A record: an object whose keys are the record's components.
 *
 * @param written the kind's name in the file, which stands first under {@code kind}; empty where the record is no kind
 */
public record FormShape(Class<?> type, String written, List<Key> keys) implements Shape {
    static final String KIND = "kind";

    public FormShape {
        keys = List.copyOf(keys);
    }

    /** The same record as one kind among others. */
    public FormShape as(String kind) {
        return new FormShape(type, kind, keys);
    }

    /** A component: its key, its shape, whether the key may be left out, and how its value is got. */
    record Key(String name, Shape shape, Leave leave, Method accessor) {
        /** Whether a value is not written down, since leaving it out says the same. */
        boolean leftOut(Object value) {
            return value instanceof Plannable.Pencilled<?> || leave == Leave.EMPTY && ((List<?>) value).isEmpty();
        }
    }

    /** Whether a key may be left out, and what that means. */
    enum Leave {
        NEVER,
        NULL,
        EMPTY,
        PENCILLED
    }

    @Override
    public String accepted() {
        return "an object with the keys " + String.join(", ", names());
    }

    @Override
    public List<Found> check(Tree tree, String path, Checking checking) {
        if (!(tree instanceof Tree.JsonObject object)) {
            checking.problem(tree.at(), path, Unfit.wanted(accepted(), tree).getMessage());
            return List.of();
        }
        Map<String, Tree> present = present(object, path, checking);
        Map<String, List<Found>> values = new LinkedHashMap<>();
        for (Key key : keys) {
            Tree value = present.get(key.name());
            if (value != null) {
                values.put(key.name(), check(key, value, Way.key(path, key.name()), checking));
            } else if (key.leave() == Leave.NEVER) {
                checking.problem(object.at(), Way.key(path, key.name()), missing(key.name(), key.shape()));
            }
        }
        HalfRead record = new HalfRead(type, path, object, values);
        checking.watch().pass(record);
        return List.of(new Found(record, path, tree));
    }

    private static List<Found> check(Key key, Tree value, String path, Checking checking) {
        if (value.kind() == Tree.Kind.NOTHING && key.leave() != Leave.NEVER) {
            checking.problem(value.at(), path, "Found null; leave the key out where there is nothing to say.");
            return List.of();
        }
        return key.shape().check(value, path, checking);
    }

    static String missing(String key, Shape shape) {
        return "The key " + Quoted.of(key) + " is missing in this object; accepted there: " + shape.accepted() + ".";
    }

    /** The values by key; a misspelt key counts as the one that it is close to. */
    private Map<String, Tree> present(Tree.JsonObject object, String path, Checking checking) {
        Map<String, Tree> present = new LinkedHashMap<>();
        List<String> names = names();
        List<Tree.Member> unknown = new ArrayList<>();
        for (Tree.Member member : object.members()) {
            if (names.contains(member.key())) {
                present.put(member.key(), member.value());
            } else {
                unknown.add(member);
            }
        }
        names.removeAll(present.keySet());
        for (Tree.Member member : unknown) {
            Optional<String> close = checking.problems().full() ? Optional.empty() : Closest.to(member.key(), names);
            checking.problem(member.at(), Way.key(path, member.key()), unknown(member.key(), close));
            close.ifPresent(name -> present.putIfAbsent(name, member.value()));
        }
        return present;
    }

    private String unknown(String key, Optional<String> close) {
        return "The key " + Quoted.of(key) + " is not known here; "
                + close.map(name -> "write " + Quoted.of(name) + ".")
                        .orElseGet(() -> "the keys are " + String.join(", ", names()) + ".");
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        if (!written.isEmpty()) {
            names.add(KIND);
        }
        keys.forEach(key -> names.add(key.name()));
        return names;
    }

    @Override
    public Object bind(Tree tree) {
        Tree.JsonObject object = (Tree.JsonObject) tree;
        Class<?>[] types = new Class<?>[keys.size()];
        Object[] values = new Object[keys.size()];
        for (int i = 0; i < values.length; i++) {
            Key key = keys.get(i);
            types[i] = key.accessor().getReturnType();
            Optional<Tree> value = object.get(key.name());
            if (value.isPresent()) {
                values[i] = key.shape().bind(value.get());
            } else if (key.leave() == Leave.PENCILLED) {
                values[i] = Plannable.pencilled();
            } else if (key.leave() == Leave.EMPTY) {
                values[i] = List.of();
            }
        }
        return make(object.at(), types, values);
    }

    private Object make(Place at, Class<?>[] types, Object[] values) {
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException e) {
            throw new Unfit(at, String.valueOf(e.getTargetException().getMessage()));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(type + " is not a public record.", e);
        }
    }

    @Override
    public Tree write(Object value) {
        Json.ObjectBuilder object = Json.object();
        if (!written.isEmpty()) {
            object.put(KIND, written);
        }
        for (Key key : keys) {
            Object component = get(key.accessor(), value);
            if (component != null && !key.leftOut(component)) {
                object.put(key.name(), key.shape().write(component));
            }
        }
        return object.build();
    }

    private static @Nullable Object get(Method accessor, Object record) {
        try {
            return accessor.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(accessor + " is not a public component.", e);
        }
    }

    @Override
    public Tree schema(Definitions definitions) {
        return definitions.reference(WrittenNames.hyphened(type.getSimpleName()), () -> inline(definitions));
    }

    /** The schema itself, where {@link #schema} is a reference to it. */
    public Tree inline(Definitions definitions) {
        Json.ObjectBuilder properties = Json.object();
        List<String> required = new ArrayList<>();
        if (!written.isEmpty()) {
            properties.put(KIND, Json.object().put("const", written));
            required.add(KIND);
        }
        for (Key key : keys) {
            properties.put(key.name(), key.shape().schema(definitions));
            if (key.leave() == Leave.NEVER) {
                required.add(key.name());
            }
        }
        return Json.object()
                .put("type", "object")
                .put("properties", properties)
                .put("required", Json.texts(required))
                .put("additionalProperties", false)
                .build();
    }
}

package setwright.shop;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Typed;

/** Compares a row as written with the record that it becomes: keys, kinds of value, words of enums. */
final class RecordShape {
    private static final Map<String, Class<?>> RECORDS = records(ShopRow.class);

    private final List<String> faults = new ArrayList<>();

    private RecordShape() {}

    /** The records of the sealed family by the name that their kind is written with. */
    private static Map<String, Class<?>> records(Class<?> family) {
        Map<String, Class<?>> found = new TreeMap<>();
        for (Class<?> each : family.getPermittedSubclasses()) {
            if (each.isRecord()) {
                String words = each.getSimpleName().replaceAll("(?<=.)(?=[A-Z])", "-");
                found.put(words.toLowerCase(Locale.ROOT).replace("-pair", "").replace("hand-", ""), each);
            } else {
                found.putAll(records(each));
            }
        }
        return found;
    }

    static Set<String> kinds() {
        return RECORDS.keySet();
    }

    static List<String> faults(PlainRow row) {
        RecordShape shape = new RecordShape();
        shape.compare(row.id(), RECORDS.get(row.kind()), row.keys(), Set.of("kind"));
        return shape.faults;
    }

    private void compare(String place, Class<?> record, Map<?, ?> keys, Set<String> alsoAllowed) {
        Set<Object> unknown = new LinkedHashSet<>(keys.keySet());
        unknown.removeAll(alsoAllowed);
        for (RecordComponent component : record.getRecordComponents()) {
            unknown.remove(component.getName());
            Object value = keys.get(component.getName());
            if (value != null) {
                value(place + "." + component.getName(), component.getGenericType(), value);
            } else if (!component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
                faults.add(place + " lacks " + component.getName());
            }
        }
        unknown.forEach(key -> faults.add(place + " has the unknown key " + key));
    }

    private void value(String place, Type type, Object value) {
        if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
            if (value instanceof List<?> list) {
                list.forEach(one -> value(place, generic.getActualTypeArguments()[0], one));
            } else {
                faults.add(place + " is not a list");
            }
        } else if (type instanceof Class<?> plain && plain.isRecord() && value instanceof Map<?, ?> map) {
            compare(place, plain, map, Set.of());
        } else if (!fits(type, value)) {
            faults.add(place + " is not " + type.getTypeName() + ": " + value);
        }
    }

    private static boolean fits(Type type, Object value) {
        if (type == int.class) {
            return value instanceof Integer;
        }
        if (type == boolean.class) {
            return value instanceof Boolean;
        }
        if (type instanceof Class<?> plain && plain.isEnum()) {
            return Arrays.stream(plain.getEnumConstants())
                    .anyMatch(constant -> words((Enum<?>) constant).equals(value));
        }
        boolean quantity = type instanceof ParameterizedType generic && generic.getRawType() == Typed.class;
        return (quantity || type == String.class) && value instanceof String text && !text.isBlank();
    }

    private static String words(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

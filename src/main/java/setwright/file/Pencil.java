package setwright.file;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.file.shape.WrittenNames;
import setwright.job.Drawn;
import setwright.job.DrawnHolding;
import setwright.job.DrawnUp;
import setwright.job.Standing;
import setwright.quantity.Typed;

/**
 * What the pencil filled in, by the ids of set-ups and operations. A set-up or operation that the pencil added stands
 * there whole, of the others only what they left open.
 */
final class Pencil {
    private Pencil() {}

    static Tree of(DrawnUp drawnUp) {
        return Json.object()
                .put(
                        "setUps",
                        Json.array(drawnUp.setUps().stream()
                                .map(setUp -> record(setUp, false))
                                .toList()))
                .build();
    }

    private static Tree record(Record record, boolean partOfAdded) {
        boolean added = partOfAdded || standing(record) == Standing.PENCILLED;
        Json.ObjectBuilder object = Json.object();
        if (record instanceof DrawnHolding holding) {
            object.put("kind", WrittenNames.constant(holding.kind()));
        }
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            Object value = get(component, record);
            if (value instanceof Drawn<?> drawn) {
                if (drawn.pencilled()) {
                    object.put(component.getName(), plain(drawn.value()));
                }
            } else if (value != null && !(value instanceof Standing)) {
                put(object, component.getName(), value, added);
            }
        }
        return object.build();
    }

    private static void put(Json.ObjectBuilder object, String key, Object value, boolean added) {
        if (value instanceof DrawnHolding holding) {
            object.put(key, record((Record) holding, added));
        } else if (value instanceof List<?> none && none.isEmpty() && !key.equals("operations")) {
            return;
        } else if (value instanceof Record one) {
            object.put(key, record(one, added));
        } else if (value instanceof List<?> list && list.stream().allMatch(Record.class::isInstance)) {
            object.put(
                    key,
                    Json.array(list.stream()
                            .map(item -> record((Record) item, false))
                            .toList()));
        } else if (added || key.equals("id")) {
            object.put(key, plain(value));
        }
    }

    private static Tree plain(Object value) {
        if (value instanceof Typed<?> typed) {
            return Json.text(typed.text());
        }
        if (value instanceof Enum<?> constant) {
            return Json.text(WrittenNames.constant(constant));
        }
        if (value instanceof Integer count) {
            return Json.number((long) count);
        }
        if (value instanceof List<?> list) {
            return Json.array(list.stream().map(Pencil::plain).toList());
        }
        return Json.text(value.toString());
    }

    private static @Nullable Standing standing(Record record) {
        return Stream.of(record.getClass().getRecordComponents())
                .map(component -> get(component, record))
                .filter(Standing.class::isInstance)
                .map(Standing.class::cast)
                .findFirst()
                .orElse(null);
    }

    private static @Nullable Object get(RecordComponent component, Record record) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component + " is not public.", e);
        }
    }
}

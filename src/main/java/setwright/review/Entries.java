package setwright.review;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.job.Drawn;
import setwright.job.JobPlan;
import setwright.job.Size;
import setwright.plan.Plan;
import setwright.quantity.Typed;
import setwright.shop.ShopRow;

/**
 * Every value of a drawn-up job and of the shop rows that it uses, one by one, in the order of the records: whatever a
 * record gains later is compared and signed without anybody thinking of it.
 */
final class Entries {
    /** Drawn up with the rest, or read from the rows in use. */
    private static final List<String> ELSEWHERE = List.of("setUps", "rows");

    /** Said by the place that an entry stands at or by its standing; and where a thing is kept, which changes no plan. */
    private static final List<String> LEFT_OUT = List.of("id", "standing", "kept");

    private final List<Entry> found = new ArrayList<>();

    private Entries() {}

    static List<Entry> of(Plan plan) {
        Entries entries = new Entries();
        JobPlan planned = plan.job().plan();
        for (RecordComponent component : JobPlan.class.getRecordComponents()) {
            if (!ELSEWHERE.contains(component.getName())) {
                entries.walk(EntryPlace.JOB.down(component.getName()), value(component, planned));
            }
        }
        entries.walk(EntryPlace.JOB.down("setUps"), plan.drawnUp().setUps());
        for (ShopRow row : RowsInUse.of(plan)) {
            entries.walk(EntryPlace.JOB.in("shop/" + row.id()), row);
        }
        return List.copyOf(entries.found);
    }

    private void walk(EntryPlace at, @Nullable Object value) {
        Optional<String> text = text(value);
        if (text.isPresent()) {
            found.add(at.entry(text.get()));
        } else if (value instanceof Drawn<?> drawn) {
            walk(at.standing(drawn.standing()), drawn.value());
        } else if (value instanceof List<?> list) {
            list(at, list);
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, each) -> walk(at.down(text(key).orElseThrow()), each));
        } else if (value instanceof Record tree) {
            parts(at, tree);
        }
    }

    private void parts(EntryPlace at, Record tree) {
        for (RecordComponent component : tree.getClass().getRecordComponents()) {
            if (!LEFT_OUT.contains(component.getName())) {
                walk(at.down(component.getName()), value(component, tree));
            }
        }
    }

    /** Things with ids stand at their ids, and their order is an entry of its own; others stand at their number. */
    private void list(EntryPlace at, List<?> list) {
        List<String> ids = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        int number = 0;
        for (Object each : list) {
            number++;
            Optional<String> id = id(each);
            Optional<String> text = text(each);
            if (id.isPresent()) {
                ids.add(id.get());
                walk(at.in(id.get()), each);
            } else if (text.isPresent()) {
                texts.add(text.get());
            } else {
                walk(at.down(String.valueOf(number)), each);
            }
        }
        if (!ids.isEmpty()) {
            found.add(at.order(String.join(Entry.BETWEEN, ids)));
        }
        if (!texts.isEmpty()) {
            found.add(at.entry(String.join(Entry.BETWEEN, texts)));
        }
    }

    private static Optional<String> id(Object value) {
        if (value instanceof Record tree) {
            for (RecordComponent component : tree.getClass().getRecordComponents()) {
                if (component.getName().equals("id")) {
                    return text(value(component, tree));
                }
            }
        }
        return Optional.empty();
    }

    /** What is one value and no tree of values. */
    private static Optional<String> text(@Nullable Object value) {
        if (value == null) {
            return Optional.of("none");
        }
        if (value instanceof Typed<?> typed) {
            return Optional.of(typed.text());
        }
        if (value instanceof Size size) {
            return Optional.of(Texts.size(size));
        }
        if (value instanceof Enum<?> word) {
            return Optional.of(Texts.words(word));
        }
        boolean plain = value instanceof String || value instanceof Number || value instanceof Boolean;
        return plain ? Optional.of(value.toString()) : Optional.empty();
    }

    private static @Nullable Object value(RecordComponent component, Record of) {
        try {
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException(
                    "The " + component.getName() + " of " + of.getClass().getName() + " cannot be read.", closed);
        }
    }
}

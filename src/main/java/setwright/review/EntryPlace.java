package setwright.review;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.job.Standing;

/**
 * How far a walk through a job has come.
 *
 * @param element the last thing with an id, with those that it is in
 * @param way keys from there
 * @param standing of what is below; null where it is not planned
 */
record EntryPlace(
        String element, List<String> way, @Nullable Standing standing) {
    static final EntryPlace JOB = new EntryPlace("", List.of(), null);

    EntryPlace {
        way = List.copyOf(way);
    }

    EntryPlace down(String key) {
        List<String> longer = new ArrayList<>(way);
        longer.add(key);
        return new EntryPlace(element, longer, standing);
    }

    /** In a thing with an id; what lies between is said by the id. */
    EntryPlace in(String id) {
        return new EntryPlace(joined(element, id), List.of(), null);
    }

    EntryPlace standing(Standing known) {
        return new EntryPlace(element, way, known);
    }

    Entry entry(String text) {
        int last = way.size() - 1;
        String between = String.join("/", way.subList(0, Math.max(0, last)));
        return new Entry(element, joined(element, between), way.get(last), text, standing);
    }

    /** The order of the things at this place. */
    Entry order(String ids) {
        Entry entry = entry(ids);
        return new Entry(entry.element(), entry.where(), Entry.ORDER_OF + entry.what(), ids, null);
    }

    private static String joined(String one, String other) {
        return one.isEmpty() || other.isEmpty() ? one + other : one + "/" + other;
    }
}

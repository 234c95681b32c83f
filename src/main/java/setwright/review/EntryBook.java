package setwright.review;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import setwright.plan.Plan;

/** The entries of a plan by their address, and the things that they belong to. */
record EntryBook(Map<String, Entry> entries, Set<String> elements) {
    /** So many of its first values say what a thing is. */
    private static final int ENOUGH = 3;

    static EntryBook of(Plan plan) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        Set<String> elements = new LinkedHashSet<>();
        for (Entry entry : Entries.of(plan)) {
            entries.put(entry.address(), entry);
            elements.add(entry.element());
        }
        return new EntryBook(entries, elements);
    }

    Set<String> addresses() {
        return entries.keySet();
    }

    @Nullable
    Entry at(String address) {
        return entries.get(address);
    }

    boolean has(String element) {
        return elements.contains(element);
    }

    /** Of a thing that is not here, the outermost thing that it is in and that is not here either. */
    String outermostMissing(String element) {
        for (int slash = element.indexOf('/'); slash >= 0; slash = element.indexOf('/', slash + 1)) {
            String outer = element.substring(0, slash);
            if (!has(outer)) {
                return outer;
            }
        }
        return element;
    }

    /** A thing by its first values. */
    String summary(String element) {
        return entries.values().stream()
                .filter(entry -> entry.element().equals(element) && !entry.isOrder())
                .map(Entry::text)
                .filter(text -> !text.isBlank())
                .limit(ENOUGH)
                .collect(Collectors.joining(Entry.BETWEEN));
    }
}

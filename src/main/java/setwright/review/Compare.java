package setwright.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import setwright.caution.Findings;
import setwright.plan.Plan;

/** What differs between two plans of a job, value by value, in the order of the new one; what went stands last. */
public final class Compare {
    private static final String SHOP = "shop/";

    private final EntryBook before;
    private final EntryBook now;
    private final Effects effects;
    private final List<Change> found = new ArrayList<>();
    private final Set<String> whole = new LinkedHashSet<>();

    private Compare(EntryBook before, EntryBook now, Effects effects) {
        this.before = before;
        this.now = now;
        this.effects = effects;
    }

    public static List<Change> of(Plan old, Findings oldFindings, Plan changed, Findings newFindings) {
        Effects effects = new Effects(old, oldFindings, changed, newFindings);
        return new Compare(EntryBook.of(old), EntryBook.of(changed), effects).changes();
    }

    private List<Change> changes() {
        Set<String> addresses = new LinkedHashSet<>(now.addresses());
        addresses.addAll(before.addresses());
        for (String address : addresses) {
            Entry was = before.at(address);
            Entry is = now.at(address);
            if (was != null && is != null) {
                differs(was, is);
            } else if (is != null) {
                onlyNow(is);
            } else if (was != null) {
                onlyBefore(was);
            }
        }
        return effects.on(found);
    }

    private void differs(Entry was, Entry is) {
        if (is.isOrder()) {
            order(was, is);
        } else if (!was.text().equals(is.text())) {
            add(is.where(), is.what(), was.text(), is.text());
        } else if (was.standing() != is.standing()) {
            add(is.where(), is.what(), was.withStanding(), is.withStanding());
        }
    }

    /** Only what is in both has an order to compare; what came or went is said by itself. */
    private void order(Entry was, Entry is) {
        String then = common(was, is);
        String since = common(is, was);
        if (!then.equals(since)) {
            add(is.where(), is.what(), then, since);
        }
    }

    private static String common(Entry one, Entry other) {
        List<String> there = List.of(other.text().split(Entry.BETWEEN));
        return String.join(
                Entry.BETWEEN,
                Stream.of(one.text().split(Entry.BETWEEN))
                        .filter(there::contains)
                        .toList());
    }

    private void onlyNow(Entry is) {
        if (before.has(is.element())) {
            one(is, Change.NOTHING, is.text());
        } else {
            whole(is, now, before);
        }
    }

    private void onlyBefore(Entry was) {
        if (now.has(was.element())) {
            one(was, was.text(), Change.NOTHING);
        } else {
            whole(was, before, now);
        }
    }

    private void one(Entry at, String was, String is) {
        if (!at.isOrder()) {
            add(at.where(), at.what(), was, is);
        }
    }

    /** A thing that came or went, with all that is in it, is one change; other shop rows in use are said by the operation. */
    private void whole(Entry entry, EntryBook has, EntryBook hasNot) {
        String element = hasNot.outermostMissing(entry.element());
        if (entry.element().startsWith(SHOP) || !whole.add(element)) {
            return;
        }
        String said = has.summary(element);
        boolean came = has == now;
        add(element, Change.ALL, came ? Change.NOTHING : said, came ? said : Change.NOTHING);
    }

    private void add(String where, String what, String was, String is) {
        found.add(new Change(where, what, was, is, Change.Effect.NONE));
    }
}

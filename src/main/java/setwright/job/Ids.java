package setwright.job;

import java.util.Collection;
import java.util.Locale;

/** Ids that the program makes: short, and unique among those that are taken. */
public final class Ids {
    private Ids() {}

    /** The wanted one where it is free, else the first free one of wanted-2, wanted-3 and so on. */
    public static String free(String wanted, Collection<String> taken) {
        String id = wanted;
        for (int i = 2; taken.contains(id); i++) {
            id = wanted + "-" + i;
        }
        return id;
    }

    /** What an operation on something is called where nobody named it: {@code slot1-t-slot}. */
    public static String operation(String of, Operation.Kind kind) {
        return of + "-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The id of a further set-up: s and its number, or the next number that is free. */
    public static String setUp(Collection<String> taken) {
        int number = taken.size() + 1;
        while (taken.contains("s" + number)) {
            number++;
        }
        return "s" + number;
    }
}

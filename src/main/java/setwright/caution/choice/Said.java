package setwright.caution.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.caution.Caution;

/** Cautions as reasons: the first of each kind in one sentence, without the place, which the ranking says once. */
final class Said {
    private Said() {}

    static List<String> all(List<Caution> cautions) {
        Map<String, List<Caution>> alike = new LinkedHashMap<>();
        cautions.forEach(caution ->
                alike.computeIfAbsent(caution.slug(), any -> new ArrayList<>()).add(caution));
        return alike.values().stream().map(Said::alike).toList();
    }

    private static String alike(List<Caution> alike) {
        return of(alike.get(0)) + (alike.size() == 1 ? "" : "; and " + (alike.size() - 1) + " more like it");
    }

    static String of(Caution caution) {
        String message = caution.message();
        int end = message.indexOf(". ");
        String first = end < 0 ? message.replaceFirst("\\.$", "") : message.substring(0, end);
        return first.replace(" " + caution.place().address(), "");
    }
}

package setwright.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Remedy;
import setwright.caution.Severity;
import setwright.file.RowNote;
import setwright.plan.NotChecked;
import setwright.quantity.Measure;
import setwright.quantity.Printing;

/** The cautions of a check with their remedies, worst first, and what was not checked. */
record CautionText(JobCheck.Worked check, Severity least, Printing printing) {
    String text() {
        StringBuilder text = new StringBuilder();
        for (Severity severity : Severity.values()) {
            if (severity.compareTo(least) <= 0) {
                text.append(of(severity));
            }
        }
        return text + notChecked();
    }

    private String of(Severity severity) {
        List<Findings.Judged> here = check.findings().judged().stream()
                .filter(judged -> judged.caution().severity() == severity)
                .toList();
        List<RowNote> rows = severity == Severity.NOTE ? check.rows() : List.of();
        if (here.isEmpty() && rows.isEmpty()) {
            return "";
        }
        String word = severity.onScreen();
        StringBuilder text = new StringBuilder("\n" + Character.toUpperCase(word.charAt(0)) + word.substring(1) + " ("
                + (here.size() + rows.size()) + ")\n");
        here.forEach(judged -> text.append(judged(judged)));
        rows.forEach(row -> text.append(Wrapped.behind("  " + row.slug() + ": ", RowWords.of(row))));
        return text.toString();
    }

    private String judged(Findings.Judged judged) {
        Caution caution = judged.caution();
        StringBuilder text = new StringBuilder("  " + caution.slug() + "\n");
        text.append(Wrapped.behind("    ", caution.message()));
        judged.accepted()
                .ifPresent(acceptance -> text.append(Wrapped.behind(
                        "    accepted: ", acceptance.by() + ", " + acceptance.at() + ": " + acceptance.reason())));
        List<Remedy> remedies = caution.severity() == Severity.NOTE ? List.of() : check.remedies(caution);
        for (Remedy remedy : remedies) {
            text.append(Wrapped.behind("    remedy: ", remedy(remedy)));
        }
        return text.toString();
    }

    private String remedy(Remedy remedy) {
        List<String> effects = new ArrayList<>();
        remedy.adds().stream().map(Caution::slug).distinct().forEach(slug -> effects.add("brings " + slug));
        if (Math.abs(remedy.timeEach()) >= 1) {
            effects.add((remedy.timeEach() > 0 ? "+" : "-") + printing.of(Measure.TIME, Math.abs(remedy.timeEach()))
                    + " a part");
        }
        return remedy.text() + (effects.isEmpty() ? "" : " (" + String.join(", ", effects) + ")");
    }

    /** One line for each check and need, with all places where it could not look. */
    private String notChecked() {
        Map<String, List<String>> places = new LinkedHashMap<>();
        for (NotChecked what : check.findings().notChecked()) {
            places.computeIfAbsent(what.check() + ": needs " + what.needs(), key -> new ArrayList<>())
                    .add(place(what));
        }
        if (places.isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder("\nNot checked\n");
        places.forEach((what, where) -> {
            List<String> named =
                    where.stream().filter(place -> !place.isEmpty()).toList();
            text.append(Wrapped.behind("  ", what + (named.isEmpty() ? "" : " (" + String.join(", ", named) + ")")));
        });
        return text.toString();
    }

    private static String place(NotChecked what) {
        return what.operation().isEmpty() ? what.setUp() : what.setUp() + "/" + what.operation();
    }
}

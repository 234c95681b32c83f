package setwright.command;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Severity;
import setwright.file.JobFile;
import setwright.plan.NotChecked;
import setwright.review.Fingerprint;

/** What the check says, in the sentences that stand on a set-up sheet. */
final class SheetFindings {
    private SheetFindings() {}

    static setwright.sheet.Findings of(JobCheck.Worked check) {
        List<String> open = new ArrayList<>();
        List<String> accepted = new ArrayList<>();
        for (Findings.Judged judged : check.findings().judged()) {
            Caution caution = judged.caution();
            String said = caution.severity().onScreen() + ", " + caution.slug() + ": " + caution.message();
            if (judged.accepted().isPresent()) {
                accepted.add(said + " Accepted by " + judged.accepted().get().by() + ": "
                        + judged.accepted().get().reason());
            } else if (caution.severity() != Severity.NOTE) {
                open.add(said);
            }
        }
        return new setwright.sheet.Findings(
                Head.of(check.findings()),
                open,
                accepted,
                check.findings().notChecked().stream()
                        .map(SheetFindings::sentence)
                        .toList(),
                Fingerprint.of(
                                check.plan(),
                                JobFile.canonical(check.plan().job().plan()))
                        .onPage());
    }

    private static String sentence(NotChecked what) {
        String where = what.setUp().isEmpty()
                ? ""
                : " (" + what.setUp() + (what.operation().isEmpty() ? "" : "/" + what.operation()) + ")";
        return what.check() + where + " needs " + what.needs() + ".";
    }
}

package setwright.command;

import setwright.caution.Findings;
import setwright.caution.Severity;

/** How a plan stands, in a sentence or two. */
final class Head {
    private Head() {}

    static String of(Findings findings) {
        int stops = findings.open(Severity.STOP).size();
        String stands = stops == 0
                ? "Nothing found that stops this plan."
                : "Do not run: " + Plural.of(stops, "thing stops", "things stop") + " this plan.";
        int cautions = findings.open(Severity.CAUTION).size();
        String also = cautions == 0 ? "" : " " + Plural.of(cautions, "caution", "cautions") + ".";
        int missing = findings.notChecked().size();
        return stands + also + " " + Plural.of(findings.looked(), "check", "checks") + " looked"
                + (missing == 0 ? "." : ", " + missing + " could not (below).");
    }
}

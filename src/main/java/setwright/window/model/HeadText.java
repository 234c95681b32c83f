package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import setwright.caution.Findings;
import setwright.review.Verdict;

/** One sentence how the plan stands; what is to be done about it stands at the foot. */
public final class HeadText {
    private HeadText() {}

    /** @param working what the background is at; empty while it rests */
    public static Head of(Findings findings, String working) {
        Verdict verdict = Verdict.of(findings);
        String sentence = verdict.stops() == 0 ? verdict.sentence() : doNotRun(verdict) + " " + verdict.looked();
        return new Head(Badges.of(findings, caution -> true), sentence, working);
    }

    /** While nothing was worked out, or where it cannot be. */
    public static Head unworked(String sentence, String working) {
        return new Head(Badge.NONE, sentence, working);
    }

    private static String doNotRun(Verdict verdict) {
        List<String> more = new ArrayList<>();
        if (verdict.cautions() > 0) {
            more.add(Words.count(verdict.cautions(), "caution"));
        }
        if (verdict.accepted() > 0) {
            more.add(verdict.accepted() + " accepted");
        }
        String stops = verdict.stops() == 1 ? "one thing stops this plan" : verdict.stops() + " things stop this plan";
        return "Do not run: " + stops + (more.isEmpty() ? "" : "; " + String.join(", ", more)) + ".";
    }
}

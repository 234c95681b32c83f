package setwright.caution.choice;

import java.util.List;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Severity;
import setwright.plan.Plan;

/**
 * A candidate that was worked out and judged.
 *
 * @param order its place among the candidates
 * @param plan with it; of the plan before where it was not worth a trial
 * @param heard the cautions that are about it
 * @param stopped by what it is dropped; empty where it is kept
 */
record Tried(int order, Candidate candidate, Plan plan, Findings findings, List<Caution> heard, List<String> stopped) {
    boolean kept() {
        return stopped.isEmpty();
    }

    long cautions() {
        return heard.stream()
                        .filter(caution -> caution.severity() != Severity.NOTE)
                        .count()
                + candidate.doubts().size();
    }

    long notes() {
        return heard.stream()
                .filter(caution -> caution.severity() == Severity.NOTE)
                .count();
    }
}

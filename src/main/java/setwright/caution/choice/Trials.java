package setwright.caution.choice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Judge;
import setwright.caution.Severity;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.Shop;

/**
 * Works every candidate out on a copy of the job. What all of them have in common is no reason to choose between them,
 * unless it is what the choice itself has to answer for.
 *
 * @param about which cautions may be about a candidate
 * @param answersFor slugs of what the choice has to answer for
 */
record Trials(Plan plan, Findings findings, Shop shop, Predicate<Caution> about, List<String> answersFor) {
    /** Empty where it was dropped on the way. */
    List<Tried> of(List<Candidate> candidates, Trying trying) {
        List<Judged> judged = new ArrayList<>();
        int done = 0;
        int all = (int) candidates.stream()
                .filter(candidate -> candidate.against().isEmpty())
                .count();
        for (Candidate candidate : candidates) {
            if (trying.dropped()) {
                return List.of();
            }
            if (candidate.against().isEmpty()) {
                trying.at(done++, all);
                judged.add(judged(candidate));
            } else {
                judged.add(new Judged(candidate, plan, findings, List.of()));
            }
        }
        return told(judged);
    }

    private record Judged(Candidate candidate, Plan plan, Findings findings, List<Caution> heard) {}

    /** What stands already is worked out already. */
    private Judged judged(Candidate candidate) {
        if (candidate.changed().equals(plan.job())) {
            return new Judged(candidate, plan, findings, heard(findings));
        }
        Plan changed = Planner.after(plan, candidate.changed(), shop);
        Findings after = Judge.judge(changed);
        return new Judged(candidate, changed, after, heard(after));
    }

    private List<Caution> heard(Findings after) {
        return after.cautions().stream()
                .filter(caution -> about.test(caution)
                        || caution.severity() == Severity.STOP
                                && findings.find(caution.identity()).isEmpty())
                .toList();
    }

    private List<Tried> told(List<Judged> judged) {
        Set<String> common = common(judged);
        List<Tried> told = new ArrayList<>();
        for (Judged one : judged) {
            List<Caution> heard = one.heard().stream()
                    .filter(caution -> answersFor.contains(caution.slug()) || !common.contains(caution.identity()))
                    .toList();
            List<String> stopped = one.candidate().against().isEmpty()
                    ? Said.all(heard.stream()
                            .filter(caution -> caution.severity() == Severity.STOP)
                            .toList())
                    : one.candidate().against();
            told.add(new Tried(told.size(), one.candidate(), one.plan(), one.findings(), heard, stopped));
        }
        return told;
    }

    private static Set<String> common(List<Judged> judged) {
        List<Judged> tried = judged.stream()
                .filter(one -> one.candidate().against().isEmpty())
                .toList();
        Set<String> common = new LinkedHashSet<>();
        if (tried.size() > 1) {
            tried.get(0).heard().forEach(caution -> common.add(caution.identity()));
            tried.forEach(one ->
                    common.retainAll(one.heard().stream().map(Caution::identity).toList()));
        }
        return common;
    }
}

package setwright.window.state;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import setwright.caution.Caution;
import setwright.caution.Findings;
import setwright.caution.Judge;
import setwright.caution.Remedies;
import setwright.caution.Remedy;
import setwright.caution.Severity;
import setwright.job.Job;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.Shop;

/**
 * The two stages of working a job out: plan and cautions at once; then what takes longer, and what would mend the open
 * cautions, worst first.
 */
public final class Stages {
    private Stages() {}

    /**
     * A job and the shop that it is planned with.
     *
     * @param before the plan that was made last, of whatever job; most of it stays
     */
    public record Wish(Job job, Shop shop, Optional<Plan> before) {
        public Plan plan() {
            return before.map(plan -> Planner.after(plan, job, shop)).orElseGet(() -> Planner.plan(job, shop));
        }
    }

    public static void work(Wish wish, Progress progress, Consumer<Evaluated> publish) {
        Plan plan = wish.plan();
        Findings findings = Judge.judge(plan);
        Evaluated evaluated = new Evaluated(plan, findings);
        publish.accept(evaluated);
        Plan settled = plan.settled(wish.before);
        if (settled != plan) {
            findings = Judge.judge(settled);
            evaluated = new Evaluated(settled, findings);
            publish.accept(evaluated);
        }
        List<Caution> open = worthMending(findings);
        for (int i = 0; i < open.size(); i++) {
            Caution caution = open.get(i);
            progress.at("trying what would mend it", i, open.size());
            List<Remedy> tried = Remedies.tried(settled, findings, caution, wish.shop, progress::cancelled);
            if (progress.cancelled()) {
                throw new CancellationException("a newer state is wanted");
            }
            evaluated = evaluated.with(caution.identity(), tried);
            publish.accept(evaluated);
        }
    }

    private static List<Caution> worthMending(Findings findings) {
        return findings.judged().stream()
                .filter(Findings.Judged::open)
                .map(Findings.Judged::caution)
                .filter(caution -> caution.severity() != Severity.NOTE)
                .toList();
    }
}

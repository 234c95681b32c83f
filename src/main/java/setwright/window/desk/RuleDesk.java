package setwright.window.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import setwright.plan.Plan;
import setwright.plan.cut.LimitRule;

/** Where each limit of the unfolded operation binds. */
final class RuleDesk {
    private final Searched<List<LimitRule>> searched;

    RuleDesk(Executor deliver, Runnable arrived) {
        searched = new Searched<>(Plan::limitRules, List.of(), deliver, arrived);
    }

    void look(Optional<Plan> plan, String line) {
        searched.look(plan.filter(now -> now.cut().operation(line).isPresent()), line);
    }

    List<LimitRule> rules(String line) {
        return searched.found(line);
    }

    boolean busy() {
        return searched.busy();
    }

    void end() {
        searched.end();
    }
}

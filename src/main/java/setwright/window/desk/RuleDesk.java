package setwright.window.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import setwright.plan.Plan;
import setwright.plan.cut.LimitRule;
import setwright.window.state.Evaluation;
import setwright.window.state.Progress;

/** Searches in the background where each limit of the unfolded operation binds. */
final class RuleDesk {
    private final Runnable arrived;
    private final Evaluation<Wish, Found> evaluation;
    private @Nullable Wish wanted;
    private @Nullable Found found;

    private record Wish(Plan plan, String line) {
        boolean sameAs(@Nullable Wish other) {
            return other != null && plan == other.plan && line.equals(other.line);
        }
    }

    private record Found(Wish wish, List<LimitRule> rules) {}

    RuleDesk(Executor deliver, Runnable arrived) {
        this.arrived = arrived;
        evaluation = new Evaluation<>(RuleDesk::work, new Results(), deliver);
    }

    private static void work(Wish wish, Progress progress, Consumer<Found> publish) {
        publish.accept(new Found(wish, wish.plan().limitRules(wish.line())));
    }

    /** Begins to search where the plan or the line is another than the one looked at last. */
    void look(Optional<Plan> plan, String line) {
        plan.filter(now -> now.cut().operation(line).isPresent()).ifPresent(now -> {
            Wish wish = new Wish(now, line);
            if (!wish.sameAs(wanted)) {
                wanted = wish;
                evaluation.want(wish);
            }
        });
    }

    /** What was found for a line; of the plan before while the newest is searched. */
    List<LimitRule> rules(String line) {
        Found last = found;
        return last != null && last.wish().line().equals(line) ? last.rules() : List.of();
    }

    boolean busy() {
        return evaluation.busy();
    }

    void end() {
        evaluation.close();
    }

    private final class Results implements Evaluation.Receiver<Found> {
        @Override
        public void arrived(Found result) {
            found = result;
            arrived.run();
        }

        @Override
        public void failed(RuntimeException why) {
            found = null;
            arrived.run();
        }

        @Override
        public void finished() {
            arrived.run();
        }
    }
}

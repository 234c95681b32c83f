package setwright.window.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import setwright.caution.Findings;
import setwright.caution.choice.HolderRanking;
import setwright.caution.choice.HoldingRanking;
import setwright.caution.choice.Ranked;
import setwright.caution.choice.Trying;
import setwright.job.ChoiceEdits;
import setwright.job.Job;
import setwright.plan.Plan;
import setwright.shop.Shop;
import setwright.window.model.Planned;
import setwright.window.model.RankingModel;
import setwright.window.model.RankingPage;
import setwright.window.state.Evaluation;
import setwright.window.state.Progress;
import setwright.window.state.Selection;

/** Ranks what would hold the work or the cutter of the chosen line, beside the desk, while anybody looks at it. */
final class RankingDesk implements RankingActions {
    private final Desk desk;
    private final Evaluation<Wish, Found> evaluation;

    private boolean open;
    private @Nullable Wish wanted;
    private @Nullable Found found;
    private String failure = "";

    /** @param operation whose holders are ranked; empty for the holdings of the set-up */
    private record Wish(Plan plan, Findings findings, Shop shop, String setUp, String operation) {
        boolean sameAs(@Nullable Wish other) {
            return other != null && plan == other.plan && ofTheLineOf(other);
        }

        boolean ofTheLineOf(Wish other) {
            return setUp.equals(other.setUp) && operation.equals(other.operation);
        }

        String of() {
            return operation.isEmpty() ? setUp : operation;
        }
    }

    private record Found(Wish wish, List<Ranked> ranked) {}

    RankingDesk(Desk desk, Executor deliver) {
        this.desk = desk;
        evaluation = new Evaluation<>(RankingDesk::work, new Results(), deliver);
    }

    private static void work(Wish wish, Progress progress, Consumer<Found> publish) {
        Trying trying = new Told(progress);
        List<Ranked> ranked = wish.operation.isEmpty()
                ? HoldingRanking.of(wish.plan, wish.findings, wish.setUp, wish.shop, trying)
                : HolderRanking.of(wish.plan, wish.findings, wish.operation, wish.shop, trying);
        if (progress.cancelled()) {
            throw new CancellationException("another ranking is wanted");
        }
        publish.accept(new Found(wish, ranked));
    }

    private record Told(Progress progress) implements Trying {
        @Override
        public boolean dropped() {
            return progress.cancelled();
        }

        @Override
        public void at(int done, int of) {
            progress.at("trying " + (done + 1) + " of " + of, done, of);
        }
    }

    @Override
    public void open() {
        open = !open;
        if (!open) {
            forget();
        }
        desk.refresh();
    }

    @Override
    public void close() {
        open = false;
        forget();
        desk.refresh();
    }

    /** Nobody looks any more. */
    private void forget() {
        evaluation.stop();
        wanted = null;
        found = null;
    }

    @Override
    public void take(int rank, String because) {
        Found last = found;
        if (last == null || !last.wish.sameAs(wanted)) {
            return;
        }
        desk.planned()
                .filter(Planned::upToDate)
                .filter(now -> now.plan() == last.wish.plan)
                .ifPresent(now -> last.ranked.stream()
                        .filter(one -> one.rank() == rank && one.kept() && !one.now())
                        .findFirst()
                        .ifPresent(one -> {
                            Job changed = ChoiceEdits.because(one.changed(), last.wish.of(), rank == 1 ? "" : because);
                            open = false;
                            forget();
                            desk.step(
                                    one.text() + " taken",
                                    changed,
                                    desk.session().selection());
                        }));
    }

    /** Begins to rank where the plan or the line is another than the one looked at last. */
    void look(Optional<Planned> planned) {
        if (!open) {
            return;
        }
        planned.filter(Planned::upToDate)
                .flatMap(this::wish)
                .filter(wish -> !wish.sameAs(wanted))
                .ifPresent(wish -> {
                    if (found != null && !found.wish.ofTheLineOf(wish)) {
                        found = null;
                    }
                    failure = "";
                    wanted = wish;
                    evaluation.want(wish);
                });
    }

    private Optional<Wish> wish(Planned planned) {
        Selection at = desk.session().selection();
        String operation = planned.operation(at.line()).isPresent() ? at.line() : "";
        return planned.setUp(at.setUp())
                .map(drawn -> new Wish(planned.plan(), planned.findings(), desk.shop(), drawn.id(), operation));
    }

    RankingPage page(Optional<Planned> planned) {
        Wish wish = wanted;
        if (!open || planned.isEmpty()) {
            return RankingPage.CLOSED;
        }
        Found last = found;
        String title = wish == null ? "" : RankingModel.title(planned.get(), wish.setUp, wish.operation);
        List<RankingPage.Item> items = last == null ? List.of() : RankingModel.items(planned.get(), last.ranked);
        return new RankingPage(true, title, working(), items);
    }

    private String working() {
        if (!failure.isEmpty()) {
            return "This could not be ranked: " + failure;
        }
        String doing = evaluation.standing().doing();
        return evaluation.busy() ? "Ranking" + (doing.isEmpty() ? "" : ", " + doing) : "";
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
            desk.refresh();
        }

        @Override
        public void failed(RuntimeException why) {
            failure = String.valueOf(why.getMessage());
            desk.refresh();
        }

        @Override
        public void finished() {
            desk.refresh();
        }
    }
}

package setwright.window.desk;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import setwright.plan.Plan;
import setwright.window.state.Evaluation;
import setwright.window.state.Progress;

/**
 * Searches in the background for what is asked of one place of the plan; the newest question wins.
 *
 * @param <T> what is found
 */
final class Searched<T> {
    private final BiFunction<Plan, String, T> search;
    private final T nothing;
    private final Runnable arrived;
    private final Evaluation<Wish, Found<T>> evaluation;
    private @Nullable Wish wanted;
    private @Nullable Found<T> found;

    private record Wish(Plan plan, String place) {
        boolean sameAs(@Nullable Wish other) {
            return other != null && plan == other.plan && place.equals(other.place);
        }
    }

    private record Found<T>(Wish wish, T answer) {}

    /** @param nothing what there is while nothing was found */
    Searched(BiFunction<Plan, String, T> search, T nothing, Executor deliver, Runnable arrived) {
        this.search = search;
        this.nothing = nothing;
        this.arrived = arrived;
        evaluation = new Evaluation<>(this::work, new Results(), deliver);
    }

    private void work(Wish wish, Progress progress, Consumer<Found<T>> publish) {
        publish.accept(new Found<>(wish, search.apply(wish.plan(), wish.place())));
    }

    /** Begins to search where the plan or the place is another than the one looked at last. */
    void look(Optional<Plan> plan, String place) {
        plan.ifPresent(now -> {
            Wish wish = new Wish(now, place);
            if (!wish.sameAs(wanted)) {
                wanted = wish;
                evaluation.want(wish);
            }
        });
    }

    /** What was found for a place; of the plan before while the newest is searched. */
    T found(String place) {
        Found<T> last = found;
        return last != null && last.wish().place().equals(place) ? last.answer() : nothing;
    }

    boolean busy() {
        return evaluation.busy();
    }

    void end() {
        evaluation.close();
    }

    private final class Results implements Evaluation.Receiver<Found<T>> {
        @Override
        public void arrived(Found<T> result) {
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

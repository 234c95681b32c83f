package setwright.window.desk;

import java.util.Optional;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;
import setwright.window.state.Evaluated;
import setwright.window.state.Evaluation;
import setwright.window.state.Stages;

/** What is worked out beside the desk: the newest result, why there is none, and what is being worked at. */
final class Background implements AutoCloseable {
    private final Evaluation<Stages.Wish, Evaluated> evaluation;
    private final Runnable changed;

    private @Nullable Evaluated last;
    private String failure = "";
    private String working = "";

    /**
     * @param deliver brings results to the thread that uses the desk
     * @param changed is run on that thread whenever something is new
     */
    Background(Executor deliver, Runnable changed) {
        this.changed = changed;
        this.evaluation = new Evaluation<>(Stages::work, new Results(), deliver);
    }

    void want(Stages.Wish wish) {
        failure = "";
        evaluation.want(wish);
    }

    /** Another job takes the place: what was worked out of the old one is nothing any more. */
    void forget() {
        last = null;
    }

    boolean busy() {
        return evaluation.busy();
    }

    Optional<Evaluated> last() {
        return Optional.ofNullable(last);
    }

    /** Why the newest state could not be worked out; empty where it could. */
    String failure() {
        return failure;
    }

    /** What takes its time; empty while nothing does. */
    String working() {
        return working;
    }

    void tick() {
        String doing = evaluation.busy() ? evaluation.standing().doing() : "";
        String said = evaluation.busy() ? (doing.isEmpty() ? "Working it out" : "Working: " + doing) : "";
        if (!said.equals(working)) {
            working = said;
            changed.run();
        }
    }

    @Override
    public void close() {
        evaluation.close();
    }

    private final class Results implements Evaluation.Receiver<Evaluated> {
        @Override
        public void arrived(Evaluated result) {
            last = result;
            failure = "";
            changed.run();
        }

        @Override
        public void failed(RuntimeException why) {
            String message = why.getMessage();
            failure = message == null || message.isBlank() ? why.getClass().getSimpleName() : message;
            changed.run();
        }

        @Override
        public void finished() {
            working = "";
            changed.run();
        }
    }
}

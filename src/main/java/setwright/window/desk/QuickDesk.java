package setwright.window.desk;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import setwright.caution.Judge;
import setwright.job.Job;
import setwright.plan.Plan;
import setwright.window.model.Quick;
import setwright.window.model.QuickModel;
import setwright.window.state.Document;
import setwright.window.state.Evaluated;
import setwright.window.state.Evaluation;
import setwright.window.state.Progress;
import setwright.window.state.QuickField;
import setwright.window.state.QuickFields;
import setwright.window.state.Stages;

/** The quick check: its own small job, worked out beside the desk's, from fields that are kept for the next time. */
final class QuickDesk implements QuickActions {
    private final Desk desk;
    private final Evaluation<Stages.Wish, Evaluated> evaluation;

    private boolean open;
    private @Nullable QuickField typing;
    private @Nullable Evaluated last;
    private String failure = "";

    QuickDesk(Desk desk, Executor deliver) {
        this.desk = desk;
        evaluation = new Evaluation<>(QuickDesk::work, new Results(), deliver);
    }

    private static void work(Stages.Wish wish, Progress progress, Consumer<Evaluated> publish) {
        Plan plan = wish.plan();
        publish.accept(new Evaluated(plan, Judge.judge(plan)));
    }

    @Override
    public void open() {
        open = !open;
        typing = null;
        if (open) {
            evaluate();
        }
        desk.refresh();
    }

    @Override
    public void close() {
        open = false;
        desk.refresh();
    }

    /** Lets the background go. */
    void end() {
        evaluation.close();
    }

    boolean busy() {
        return evaluation.busy();
    }

    Quick screen() {
        if (!open) {
            return Quick.CLOSED;
        }
        Quick quick = model().screen(typing, Optional.ofNullable(last));
        return failure.isEmpty() || !quick.complaint().isEmpty() ? quick : quick.unworked(failure);
    }

    @Override
    public void typed(String key, String text) {
        QuickField.of(key).ifPresent(field -> {
            typing = field;
            put(field, text);
        });
    }

    @Override
    public void ink(String key) {
        left(key);
    }

    @Override
    public void pencil(String key) {
        QuickField.of(key).ifPresent(field -> {
            typing = null;
            put(field, "");
        });
    }

    @Override
    public void back(String key) {
        close();
    }

    @Override
    public void left(String key) {
        typing = null;
        desk.refresh();
    }

    /** The small job as an untitled document with the shop of the desk; empty while a field cannot be read. */
    Optional<Opened> kept() {
        Optional<Job> job = model().job();
        return job.map(made -> new Opened(Document.untitled("quick check", made), desk.shop()));
    }

    private void put(QuickField field, String text) {
        QuickFields changed = desk.settings().quick().with(field, text);
        desk.with(desk.settings().withQuick(changed));
        evaluate();
        desk.refresh();
    }

    private void evaluate() {
        failure = "";
        model().job()
                .ifPresent(job -> evaluation.want(new Stages.Wish(
                        job, desk.shop(), Optional.ofNullable(last).map(Evaluated::plan))));
    }

    private QuickModel model() {
        return new QuickModel(
                desk.settings().quick(), desk.shop(), desk.session().job().plan());
    }

    private final class Results implements Evaluation.Receiver<Evaluated> {
        @Override
        public void arrived(Evaluated result) {
            last = result;
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

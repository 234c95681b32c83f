package setwright.window.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import setwright.caution.Caution;
import setwright.caution.Page;
import setwright.job.Job;
import setwright.job.JobPlan;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;
import setwright.window.model.NextModel;
import setwright.window.model.Planned;
import setwright.window.model.Screen;
import setwright.window.model.ScreenModel;
import setwright.window.state.Document;
import setwright.window.state.Evaluated;
import setwright.window.state.Evaluation;
import setwright.window.state.History;
import setwright.window.state.Notice;
import setwright.window.state.Selection;
import setwright.window.state.Session;
import setwright.window.state.Settings;
import setwright.window.state.Stages;
import setwright.window.state.Typing;
import setwright.window.state.Way;

/**
 * The workbench without its window: holds the one state, takes it to the next with every action, has it worked out in the
 * background, and shows the screen that follows. Used by one thread only, the one that the executor delivers to.
 */
public final class Desk implements AutoCloseable {
    private final Clock clock;
    private final Consumer<Screen> show;
    private final Evaluation<Stages.Wish, Evaluated> evaluation;

    private Session session;
    private Settings settings;
    private Shop shop;
    private Notice notice = Notice.NONE;
    private @Nullable Evaluated evaluated;
    private String failure = "";
    private String working = "";

    /** What the desk starts with. */
    public record Start(Opened opened, Settings settings, Clock clock) {}

    /** @param deliver brings results of the background to the thread that uses the desk */
    public Desk(Start start, Executor deliver, Consumer<Screen> show) {
        this.session = Session.on(start.opened.document(), Way.PLAN);
        this.shop = start.opened.shop();
        this.settings = start.settings;
        this.clock = start.clock;
        this.show = show;
        this.evaluation = new Evaluation<>(Stages::work, new Results(), deliver);
    }

    /** Shows the first screen and begins to work. */
    public void start() {
        evaluate();
    }

    public Session session() {
        return session;
    }

    public Settings settings() {
        return settings;
    }

    public boolean busy() {
        return evaluation.busy();
    }

    /** What was worked out, together with the job as it is now; empty before the first result. */
    Optional<Planned> planned() {
        return Optional.ofNullable(evaluated).map(last -> new Planned(session.job(), last));
    }

    /** Goes on with another state: works it out where the job is another, and shows it. */
    void go(Session next) {
        boolean other = !next.job().equals(session.job());
        session = next;
        if (other) {
            evaluate();
        } else {
            refresh();
        }
    }

    /** Takes a step of the job. */
    void step(String name, String field, Job changed) {
        go(session.with(session.document().history().step(name, field, changed)));
    }

    void with(Settings changed) {
        settings = changed;
        refresh();
    }

    /** Shows something that has to be read before it goes on. */
    public void tell(Notice told) {
        notice = told;
        refresh();
    }

    /** What the caution at the foot means: what it checks, why it matters, what to do, source. */
    public Optional<Notice> explanation() {
        return currentCaution()
                .flatMap(caution -> Page.of(caution.slug()))
                .map(page -> new Notice(
                        page.title(),
                        page.sections().stream()
                                .map(section -> section.heading().words() + ": " + section.text())
                                .toList()));
    }

    public void closeNotice() {
        tell(Notice.NONE);
    }

    /** Another document takes the place of this one. */
    public void use(Opened opened) {
        shop = opened.shop();
        evaluated = null;
        notice = Notice.NONE;
        session = Session.on(opened.document(), session.way());
        evaluate();
    }

    public void undo() {
        travel(session.document().history().undo());
    }

    public void redo() {
        travel(session.document().history().redo());
    }

    private void travel(History there) {
        go(session.with(there).with(Typing.NOTHING).with(Session.Asked.NOTHING));
    }

    public void way(Way way) {
        go(session.with(way));
    }

    /** Chooses a set-up; its lines are folded. */
    public void setUp(String id) {
        go(session.with(new Selection(id, "")).with(Typing.NOTHING));
    }

    /** The other of inch and metric. */
    public void units() {
        JobPlan plan = session.job().plan();
        UnitSystem other = switch (plan.units()) {
            case METRIC -> UnitSystem.INCH;
            case INCH -> UnitSystem.METRIC;
        };
        String name = "Units to " + other.name().toLowerCase(Locale.ROOT);
        step(name, "", session.job().withPlan(plan.withUnits(other)));
    }

    public void look(String name) {
        with(settings.withLook(name));
    }

    public CardActions card() {
        return new CardDesk(this);
    }

    public NextActions next() {
        return new NextDesk(this);
    }

    public WalkActions walk() {
        return new WalkDesk(this);
    }

    public ReviewActions review() {
        return new ReviewDesk(this);
    }

    public FileDesk files() {
        return new FileDesk(this);
    }

    /** Shows that the background takes its time; asked now and then while it is busy. */
    public void tick() {
        String doing = evaluation.busy() ? evaluation.standing().doing() : "";
        String said = evaluation.busy() ? (doing.isEmpty() ? "Working it out" : "Working: " + doing) : "";
        if (!said.equals(working)) {
            working = said;
            refresh();
        }
    }

    /** The time as it is written into the record. */
    String now() {
        return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS).toString();
    }

    private void evaluate() {
        failure = "";
        evaluation.want(new Stages.Wish(session.job(), shop));
        refresh();
    }

    private void refresh() {
        show.accept(screen());
    }

    /** What is to be seen now. */
    public Screen screen() {
        return new ScreenModel(session, settings, notice).screen(planned(), failure, working);
    }

    Optional<Caution> currentCaution() {
        return planned().flatMap(planned -> NextModel.current(planned.findings(), session.asked()));
    }

    @Override
    public void close() {
        evaluation.close();
    }

    private final class Results implements Evaluation.Receiver<Evaluated> {
        @Override
        public void arrived(Evaluated result) {
            evaluated = result;
            failure = "";
            List<String> setUps = result.plan().drawnUp().setUps().stream()
                    .map(setUp -> setUp.id())
                    .toList();
            if (!setUps.contains(session.selection().setUp()) && !setUps.isEmpty()) {
                session = session.with(
                        new Selection(setUps.get(0), session.selection().line()));
            }
            refresh();
        }

        @Override
        public void failed(RuntimeException why) {
            String message = why.getMessage();
            failure = message == null || message.isBlank() ? why.getClass().getSimpleName() : message;
            refresh();
        }

        @Override
        public void finished() {
            working = "";
            refresh();
        }
    }

    /** A document with the shop that belongs to it. */
    public record Opened(Document document, Shop shop) {
        public static Opened file(Path file, Job job, Shop shop) {
            return new Opened(Document.opened(file, job), shop);
        }
    }
}

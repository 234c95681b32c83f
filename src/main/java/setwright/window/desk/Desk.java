package setwright.window.desk;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import setwright.caution.Caution;
import setwright.job.Job;
import setwright.quantity.Printing;
import setwright.shop.Shop;
import setwright.window.model.CardModel;
import setwright.window.model.CardPlaces;
import setwright.window.model.Field;
import setwright.window.model.LimitScales;
import setwright.window.model.NextModel;
import setwright.window.model.Planned;
import setwright.window.model.Screen;
import setwright.window.model.ScreenModel;
import setwright.window.model.Units;
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
    private final Background background;
    private final QuickDesk quick;
    private final RuleDesk rules;
    private final RankingDesk ranking;
    private final PlotDesk plots;
    private final EntryDesk entry = new EntryDesk(this);
    private final BenchDesk bench;
    private final Clerk clerk;
    private final Foot foot = new Foot();

    private Session session;
    private Settings settings;
    private Shop shop;
    private Notice notice = Notice.NONE;

    /** What the desk starts with. */
    public record Start(Opened opened, Settings settings, Clock clock) {}

    /** @param deliver brings results of the background to the thread that uses the desk */
    public Desk(Start start, Executor deliver, Consumer<Screen> show) {
        this.session = Session.on(start.opened.document(), Way.PLAN);
        this.shop = start.opened.shop();
        this.settings = start.settings;
        this.bench = new BenchDesk(this, settings.figures());
        this.clock = start.clock;
        this.show = show;
        this.background = new Background(deliver, this::arrived);
        this.quick = new QuickDesk(this, deliver);
        this.rules = new RuleDesk(deliver, this::refresh);
        this.ranking = new RankingDesk(this, deliver);
        this.plots = new PlotDesk(deliver, this::refresh);
        this.clerk = new Clerk(deliver);
    }

    /** Shows the first screen and begins to work. */
    public void start() {
        evaluate();
    }

    public Session session() {
        return session;
    }

    Shop shop() {
        return shop;
    }

    public Settings settings() {
        return settings;
    }

    public boolean busy() {
        return background.busy() || clerk.busy() || quick.busy() || rules.busy() || ranking.busy() || plots.busy();
    }

    /** What was worked out, together with the job as it is now; empty before the first result. */
    Optional<Planned> planned() {
        return background.last().map(last -> new Planned(session.job(), last));
    }

    /** Goes on with another state: what was said about the last one is said no more; works it out where the job is another, and shows it. */
    void go(Session next) {
        foot.say("");
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

    /** Takes a step of the job, and chooses what it was about. */
    void step(String name, Job changed, Selection chosen) {
        go(session.with(session.document().history().closed().step(name, "", changed))
                .with(chosen)
                .with(Typing.NOTHING));
    }

    /** Says something about the last step at the foot, until the next one. */
    void say(String words) {
        foot.say(words);
        refresh();
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

    public void closeNotice() {
        tell(Notice.NONE);
    }

    /** Leads back: from what had to be read; else the lines of the first five minutes are silenced for good. */
    public void back() {
        if (plots.close()) {
            refresh();
            return;
        }
        boolean read = notice.title().isEmpty();
        if (read && foot.teaches()) {
            settings = settings.withLessons(false);
        }
        closeNotice();
    }

    /** Another document takes the place of this one. */
    public void use(Opened opened) {
        foot.begin();
        shop = opened.shop();
        background.forget();
        entry.forget();
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
        entry.travelled(there.job().plan().features());
        go(session.with(there).with(Typing.NOTHING).with(Session.Asked.NOTHING));
    }

    public void way(Way way) {
        go(session.with(way));
    }

    /** The other of inch and metric. */
    public void units() {
        CardPlaces.Change change = Units.other(session.job());
        step(change.step(), "", change.job());
    }

    public void look(String name) {
        with(settings.withLook(name));
    }

    /** The next plot of the chosen line lies over the bench; after the last one the set-up is there again. */
    public void nextPlot() {
        plots.next(planned().map(Planned::plan), session.selection().line());
    }

    public CardActions card() {
        return new CardDesk(this);
    }

    public RouteActions route() {
        return new RouteDesk(this);
    }

    public OperationActions operations() {
        return new OperationDesk(this);
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

    public RankingActions ranking() {
        return ranking;
    }

    public QuickActions quick() {
        return quick;
    }

    public BenchActions bench() {
        return bench;
    }

    public EntryActions entry() {
        return entry;
    }

    /** The open job once more, untitled, with an empty record; its number off is what is asked first. */
    public void sameAgain() {
        use(new Opened(Fresh.again(session.document()), shop));
        go(session.with(session.selection().withLine(Selection.PART)));
    }

    /** The small job of the quick check takes the place of the open one; nothing where a field cannot be read. */
    public void keepQuick() {
        quick.kept().ifPresent(kept -> {
            use(kept);
            quick.close();
        });
    }

    public FileDesk files() {
        return new FileDesk(this, clerk);
    }

    /** Shows that the background takes its time; asked now and then while it is busy. */
    public void tick() {
        if (clerk.tick() || ranking.busy()) {
            refresh();
        }
        background.tick();
    }

    /** The time as it is written into the record. */
    String now() {
        return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS).toString();
    }

    private void evaluate() {
        background.want(new Stages.Wish(session.job(), shop, planned().map(Planned::plan)));
        refresh();
    }

    void refresh() {
        foot.look(session, planned());
        rules.look(planned().map(Planned::plan), session.selection().line());
        ranking.look(planned());
        plots.look(planned().map(Planned::plan), session.selection().line());
        show.accept(screen());
    }

    /** What is to be seen now. */
    public Screen screen() {
        String working = clerk.working().isEmpty() ? background.working() : clerk.working();
        return new ScreenModel(session, settings, notice)
                .screen(planned(), new ScreenModel.Said(background.failure(), working, foot.said(settings)))
                .with(quick.screen(), entry.screen(), bench.screen())
                .ranked(ranking.page(planned()))
                .ruled(LimitScales.of(rules.rules(session.selection().line()), printing()))
                .plotted(plots.plot(session.selection().line()));
    }

    /** What can be changed in the unfolded line of the card. */
    List<Field> fieldsOfCard() {
        return planned().map(now -> CardModel.of(now, session)).stream()
                .flatMap(card -> card.unfolded().fields().stream())
                .flatMap(List::stream)
                .toList();
    }

    private Printing printing() {
        return new Printing(session.job().plan().units());
    }

    Optional<Caution> currentCaution() {
        return planned().flatMap(planned -> NextModel.current(planned.findings(), session.asked()));
    }

    @Override
    public void close() {
        background.close();
        quick.end();
        rules.end();
        ranking.end();
        plots.end();
        clerk.close();
    }

    /** Where the chosen set-up is not in the plan, the first one is chosen. */
    private void arrived() {
        planned()
                .filter(Planned::upToDate)
                .map(planned -> planned.plan().drawnUp().setUps())
                .ifPresent(setUps -> {
                    Selection at = session.selection();
                    if (!setUps.isEmpty()
                            && setUps.stream().noneMatch(setUp -> setUp.id().equals(at.setUp()))) {
                        session = session.with(new Selection(setUps.get(0).id(), at.line()));
                    }
                });
        refresh();
    }
}

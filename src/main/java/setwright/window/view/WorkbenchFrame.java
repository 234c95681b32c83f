package setwright.window.view;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.drawing.Place;
import setwright.window.desk.Desk;
import setwright.window.look.Look;
import setwright.window.look.Palette;
import setwright.window.look.WindowIcon;
import setwright.window.model.RankingPage;
import setwright.window.model.Screen;
import setwright.window.state.Notice;
import setwright.window.state.Way;
import setwright.window.view.bench.BenchPanel;
import setwright.window.view.card.CardView;
import setwright.window.view.card.OperationOrder;
import setwright.window.view.entry.EntryView;
import setwright.window.view.figure.BenchFiguresView;
import setwright.window.view.head.HeadView;
import setwright.window.view.next.NextLineView;
import setwright.window.view.next.NextPage;
import setwright.window.view.notice.NoticeView;
import setwright.window.view.part.Keys;
import setwright.window.view.quick.QuickView;
import setwright.window.view.rank.RankingView;
import setwright.window.view.review.ReviewView;
import setwright.window.view.route.RoutePictures;
import setwright.window.view.route.RouteView;
import setwright.window.view.walk.WalkView;

/** The window: head, route, bench beside card, next line at the foot. */
public final class WorkbenchFrame extends JFrame {
    private static final long serialVersionUID = 1L;
    private static final Dimension FIRST = new Dimension(1366, 728);
    private static final Dimension LEAST = new Dimension(900, 560);

    private final transient Desk desk;
    private final transient FileMenu files;
    private final transient RoutePictures pictures = new RoutePictures();
    private final HeadView head;
    private final RouteView route;
    private final BenchPanel bench;
    private final CardView card;
    private final transient OperationOrder order;
    private final NoticeView notice;
    private final NextPage nextPage;
    private final NextLineView nextLine;
    private final ReviewView review;
    private final WalkView walk;
    private final EntryView entry;
    private final QuickView quick;
    private final BenchFiguresView figures;
    private final RankingView ranking;
    private final CardLayout pages = new CardLayout();
    private final JPanel whole = new JPanel(pages);
    private final CardLayout ways = new CardLayout();
    private final JPanel middle = new JPanel(ways);
    private final JPanel column = new JPanel(new BorderLayout());
    private final Menus menus;
    private Way way = Way.PLAN;
    private String asking = "job";

    public WorkbenchFrame(Desk desk) {
        this.desk = desk;
        setName("workbench");
        setIconImages(WindowIcon.sizes());
        files = new FileMenu(desk, this);
        head = new HeadView(desk::way);
        bench = new BenchPanel(desk::nextPlot);
        route = new RouteView(pictures, desk.route());
        card = new CardView(desk.card(), desk.operations());
        order = new OperationOrder(card, desk.operations());
        notice = new NoticeView(desk::closeNotice);
        nextPage = new NextPage(desk.next());
        nextLine = new NextLineView(desk.next());
        review = new ReviewView(desk.review());
        walk = new WalkView(desk.walk());
        entry = new EntryView(desk.entry());
        quick = new QuickView(desk.quick(), this::keepQuick);
        figures = new BenchFiguresView(desk.bench());
        ranking = new RankingView(desk.ranking());
        menus = new Menus(desk, this);
        setJMenuBar(menus);
        lay();
        Keys.anywhere(getRootPane(), "ESCAPE", desk::back);
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                keyboardToPage();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                quit();
            }
        });
        setMinimumSize(LEAST);
        setSize(FIRST);
    }

    private void lay() {
        JPanel plan = new JPanel(
                new MigLayout("fill, insets 0, gap 0", "[60%, fill, grow 60][40%, fill, grow 40]", "[grow, fill]"));
        JPanel pages = new JPanel(new MigLayout("fill, insets 0, gap 0, hidemode 3", "[grow, fill]", "[grow, fill][]"));
        pages.add(card, "cell 0 0, grow, wmin 0, hmin 0");
        pages.add(notice, "cell 0 0, grow, wmin 0, hmin 0");
        pages.add(entry, "cell 0 0, grow, wmin 0, hmin 0");
        pages.add(ranking, "cell 0 0, grow, wmin 0, hmin 0");
        pages.add(nextPage, "cell 0 1, growx, wmin 0");
        column.add(pages);
        plan.add(bench, "w 0:60%, h 0:100%");
        plan.add(column, "w 0:40%, h 0:100%");
        middle.add(plan, Way.PLAN.name());
        middle.add(walk, Way.WALK_THROUGH.name());
        middle.add(review, Way.REVIEW.name());
        JPanel all = new JPanel(new MigLayout(
                "fill, insets 0, gap 0, wrap 1", "[grow, fill]", "[40!, fill][84!, fill][grow, fill][44!, fill]"));
        all.add(head, "wmin 0");
        all.add(route, "wmin 0");
        all.add(middle, "wmin 0, hmin 0");
        all.add(nextLine, "wmin 0");
        whole.add(all, "job");
        whole.add(quick, "quick");
        whole.add(figures, "figures");
        setContentPane(whole);
    }

    /** Shows what is to be seen; called on the event thread. */
    public void show(Screen screen) {
        setTitle(screen.title());
        pictures.show(screen.plan());
        head.show(screen.head(), screen.way());
        route.show(screen.route());
        bench.show(
                screen.plan(),
                screen.entry().open() ? screen.at().withLine(Place.FINISHED) : screen.at(),
                screen.plot());
        card.show(screen.card());
        boolean reading = !screen.notice().title().isEmpty();
        boolean busy = reading || screen.entry().open();
        card.setVisible(!busy && !screen.ranking().open());
        if (entry.show(screen.entry())) {
            keyboardToPage();
        }
        entry.setVisible(!reading && screen.entry().open());
        if (ranking.show(busy ? RankingPage.CLOSED : screen.ranking())) {
            keyboardToPage();
        }
        if (notice.show(screen.notice())) {
            keyboardToPage();
        }
        if (nextPage.show(screen.next(), screen.person())) {
            card.takeKeyboard();
        }
        nextLine.show(screen.next());
        review.show(screen.review(), screen.person());
        walk.show(screen.walk(), screen.plan());
        menus.show(screen);
        go(screen.way());
        ask(screen);
        column.setBorder(javax.swing.BorderFactory.createMatteBorder(
                0, 1, 0, 0, Palette.now().rule()));
    }

    /** To what stands at the right: what has to be read, else the card. */
    private void keyboardToPage() {
        if (notice.isVisible()) {
            notice.takeKeyboard();
        } else if (entry.isVisible()) {
            entry.takeKeyboard();
        } else if (ranking.isVisible()) {
            ranking.takeKeyboard();
        } else {
            card.takeKeyboard();
        }
    }

    /** Another way of working takes the keyboard with it. */
    private void go(Way asked) {
        if (asked == way) {
            return;
        }
        way = asked;
        ways.show(middle, asked.name());
        switch (asked) {
            case PLAN -> keyboardToPage();
            case WALK_THROUGH -> walk.takeKeyboard();
            case REVIEW -> review.takeKeyboard();
        }
    }

    /** The quick check or a bench figure lies over everything while it is open. */
    private void ask(Screen screen) {
        quick.show(screen.quick());
        figures.show(screen.bench());
        String shown = screen.bench().open() ? "figures" : screen.quick().open() ? "quick" : "job";
        if (shown.equals(asking)) {
            return;
        }
        asking = shown;
        pages.show(whole, shown);
        switch (shown) {
            case "figures" -> figures.takeKeyboard();
            case "quick" -> quick.takeKeyboard();
            default -> keyboardToPage();
        }
    }

    void newJob() {
        files.unlessLost(() -> {
            desk.way(Way.PLAN);
            desk.entry().begin();
        });
    }

    void addNotes() {
        desk.way(Way.PLAN);
        desk.entry().open();
    }

    /** The old job once more; its number off has the keyboard. */
    void sameAgain() {
        files.unlessLost(() -> {
            desk.way(Way.PLAN);
            desk.sameAgain();
            card.toField("numberOff");
        });
    }

    void keepQuick() {
        files.unlessLost(desk::keepQuick);
    }

    FileMenu files() {
        return files;
    }

    OperationOrder order() {
        return order;
    }

    void ranking() {
        desk.way(Way.PLAN);
        desk.ranking().open();
    }

    void toRoute() {
        desk.way(Way.PLAN);
        route.takeKeyboard();
    }

    void toCard() {
        desk.way(Way.PLAN);
        card.takeKeyboard();
    }

    void toBench() {
        desk.way(Way.PLAN);
        bench.takeKeyboard();
    }

    void plots() {
        desk.way(Way.PLAN);
        desk.nextPlot();
    }

    void putOn(Look look) {
        look.putOn();
        desk.look(look.name());
        repaint();
    }

    /** What the caution at the foot means; the keys where there is none. */
    void explain() {
        desk.next().explanation().ifPresentOrElse(desk::tell, this::keys);
    }

    void keys() {
        desk.tell(
                new Notice(
                        "Keys",
                        List.of(
                                "F2 goes to the card, up and down from line to line, Enter unfolds a line and folds it again",
                                "F6 goes to the route, left and right from set-up to set-up. Insert adds an operation behind the line, Ctrl+D duplicates it, Delete deletes it, Ctrl+up and Ctrl+down move it; with Shift, and Ctrl+left and Ctrl+right, the same for the set-up",
                                "In a field: type a value, Enter inks it, Delete gives it back to the pencil; Page up and Page down nudge it",
                                "Ctrl+I inks all that is pencilled in the unfolded line",
                                "F3 goes to the bench; there left and right wind the cutter along, T goes to the tightest place, S adds the end view, + - 0 larger, smaller, fit",
                                "F8 shows the plots of the line over the bench, one after the other: force, depth against speed, time against quantity, error budget; Esc leads back to the set-up",
                                "Ctrl+N begins a new job: the size, then notes as they stand on the drawing, one a line; F7 adds notes to the open job; Ctrl+Shift+N is the same job again, for another quantity",
                                "F9 opens the quick check from anywhere: nine fields, answers as they are typed; Esc leads back",
                                "F5 opens the bench figures: type what is asked for, Enter, then what is known; Esc leads back",
                                "F12 ranks what would hold the chosen operation's cutter, or the work where none is chosen: up and down, Enter takes it, Esc leads back. Ctrl+B squares up the blank",
                                "F4 opens the next caution; then 1, 2 or 3 takes a remedy, Esc closes it",
                                "Ctrl+Z and Ctrl+Y undo and redo, without limit",
                                "F11: paper, night or as printed; Ctrl+U: inch or metric; Ctrl+1, 2, 3: plan, walk through, review",
                                "Dots below a value: pencilled, it follows every change. Plain: inked, it stays. In a box: measured")));
    }

    void quit() {
        files.unlessLost(this::dispose);
    }
}

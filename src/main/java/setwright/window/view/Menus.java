package setwright.window.view;

import java.util.function.BiConsumer;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import setwright.window.desk.Desk;
import setwright.window.desk.RouteActions;
import setwright.window.look.Look;
import setwright.window.model.Screen;
import setwright.window.state.Way;
import setwright.window.view.card.OperationOrder;
import setwright.window.view.part.Keys;

/** The menus, with the key of everything that has one. */
final class Menus extends JMenuBar {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient WorkbenchFrame frame;
    private final RecentMenu recent;
    private final JMenuItem undo;
    private final JMenuItem redo;
    private final JMenuItem next;

    Menus(Desk desk, WorkbenchFrame frame) {
        this.desk = desk;
        this.frame = frame;
        setName("menus");
        recent = new RecentMenu(desk, frame.files());
        file();
        JMenu edit = menu("Edit", 'E');
        undo = item(edit, "edit.undo", "Undo", "ctrl Z", desk::undo);
        redo = item(edit, "edit.redo", "Redo", "ctrl Y", desk::redo);
        edit.addSeparator();
        item(edit, "edit.notes", "Add notes", "F7", frame::addNotes);
        setUp();
        operation();
        JMenu view = menu("View", 'V');
        next = view(view);
        JMenu help = menu("Help", 'H');
        item(help, "help.caution", "What this caution means", "F1", frame::explain);
        item(help, "help.firstSteps", "The first five minutes", null, frame.files()::firstSteps);
        item(help, "help.keys", "Keys", "shift F1", frame::keys);
    }

    private void file() {
        JMenu file = menu("File", 'F');
        item(file, "file.new", "New job from notes", "ctrl N", frame::newJob);
        item(file, "file.again", "Same again", "ctrl shift N", frame::sameAgain);
        item(file, "file.open", "Open...", "ctrl O", frame.files()::open);
        file.add(recent);
        recent.within(file);
        item(file, "file.save", "Save", "ctrl S", frame.files()::save);
        item(file, "file.saveAs", "Save as...", "ctrl shift S", frame.files()::saveAs);
        file.addSeparator();
        item(file, "file.practice", "Practice job", null, frame.files()::practice);
        file.addSeparator();
        item(file, "file.quit", "Quit", "ctrl Q", frame::quit);
    }

    private void setUp() {
        JMenu menu = menu("Set-up", 'S');
        chosen(menu, "setUp.add", "Add one behind it, turned over", "shift INSERT", RouteActions::add);
        chosen(menu, "setUp.duplicate", "Duplicate", "ctrl shift D", RouteActions::duplicate);
        chosen(menu, "setUp.delete", "Delete", "shift DELETE", RouteActions::delete);
        menu.addSeparator();
        chosen(menu, "setUp.left", "Move left", "ctrl LEFT", (route, id) -> route.move(id, -1));
        chosen(menu, "setUp.right", "Move right", "ctrl RIGHT", (route, id) -> route.move(id, 1));
        squareUp(menu);
    }

    private void squareUp(JMenu menu) {
        menu.addSeparator();
        item(
                menu,
                "setUp.squareUp",
                "Square up the blank",
                "ctrl B",
                () -> desk.route().squareUp());
    }

    private void chosen(JMenu menu, String name, String text, String key, BiConsumer<RouteActions, String> does) {
        item(
                menu,
                name,
                text,
                key,
                () -> does.accept(desk.route(), desk.session().selection().setUp()));
    }

    private void operation() {
        JMenu menu = menu("Operation", 'O');
        OperationOrder order = frame.order();
        item(menu, "operation.add", "Add behind this line...", "INSERT", order::add);
        item(menu, "operation.duplicate", "Duplicate", "ctrl D", order::duplicate);
        item(menu, "operation.delete", "Delete", null, order::delete);
        menu.addSeparator();
        item(menu, "operation.up", "Move up", "ctrl UP", () -> order.move(-1));
        item(menu, "operation.down", "Move down", "ctrl DOWN", () -> order.move(1));
        menu.addSeparator();
        item(
                menu,
                "edit.inkAll",
                "Ink all of this line",
                "ctrl I",
                () -> desk.card().inkAll());
    }

    private JMenuItem view(JMenu view) {
        for (Way way : Way.values()) {
            item(view, "view." + way.name(), way.words(), "ctrl " + (way.ordinal() + 1), () -> desk.way(way));
        }
        view.addSeparator();
        item(view, "view.card", "Card", "F2", frame::toCard);
        item(view, "view.bench", "Bench", "F3", frame::toBench);
        item(view, "view.route", "Route", "F6", frame::toRoute);
        JMenuItem caution =
                item(view, "view.next", "Next caution", "F4", () -> desk.next().open());
        item(view, "view.ranking", "What else would hold it", "F12", frame::ranking);
        item(view, "view.quick", "Quick check", "F9", () -> desk.quick().open());
        item(view, "view.figures", "Bench figures", "F5", () -> desk.bench().open());
        item(view, "view.plots", "Plots of the line", "F8", frame::plots);
        view.addSeparator();
        item(view, "view.units", "Inch or metric", "ctrl U", desk::units);
        item(view, "view.look", "Next look", "F11", () -> frame.putOn(Look.now().next()));
        for (Look look : Look.values()) {
            item(view, "view." + look.name(), look.words(), null, () -> frame.putOn(look));
        }
        return caution;
    }

    void show(Screen screen) {
        recent.show(desk.settings().recent());
        undo.setText(screen.undo().isEmpty() ? "Undo" : "Undo: " + screen.undo());
        undo.setEnabled(!screen.undo().isEmpty());
        redo.setText(screen.redo().isEmpty() ? "Redo" : "Redo: " + screen.redo());
        redo.setEnabled(!screen.redo().isEmpty());
        next.setEnabled(!screen.next().caution().isEmpty());
    }

    private JMenu menu(String text, char mnemonic) {
        JMenu menu = new JMenu(text);
        menu.setMnemonic(mnemonic);
        add(menu);
        return menu;
    }

    private static JMenuItem item(JMenu menu, String name, String text, @Nullable String key, Runnable action) {
        JMenuItem item = new JMenuItem(Keys.action(text, action));
        item.setName(name);
        if (key != null) {
            item.setAccelerator(KeyStroke.getKeyStroke(key));
        }
        menu.add(item);
        return item;
    }
}

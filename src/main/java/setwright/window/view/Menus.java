package setwright.window.view;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import setwright.window.desk.Desk;
import setwright.window.look.Look;
import setwright.window.model.Screen;
import setwright.window.state.Way;

/** The menus, with the key of everything that has one. */
final class Menus extends JMenuBar {
    private static final long serialVersionUID = 1L;

    private final JMenuItem undo;
    private final JMenuItem redo;
    private final JMenuItem next;

    Menus(Desk desk, WorkbenchFrame frame) {
        setName("menus");
        JMenu file = menu("File", 'F');
        item(file, "file.open", "Open...", "ctrl O", frame.files()::open);
        item(file, "file.save", "Save", "ctrl S", frame.files()::save);
        item(file, "file.saveAs", "Save as...", "ctrl shift S", frame.files()::saveAs);
        file.addSeparator();
        item(file, "file.practice", "Practice job", null, frame.files()::practice);
        file.addSeparator();
        item(file, "file.quit", "Quit", "ctrl Q", frame::quit);
        JMenu edit = menu("Edit", 'E');
        undo = item(edit, "edit.undo", "Undo", "ctrl Z", desk::undo);
        redo = item(edit, "edit.redo", "Redo", "ctrl Y", desk::redo);
        edit.addSeparator();
        item(
                edit,
                "edit.inkAll",
                "Ink all of this line",
                "ctrl I",
                () -> desk.card().inkAll());
        JMenu view = menu("View", 'V');
        for (Way way : Way.values()) {
            item(view, "view." + way.name(), way.words(), "ctrl " + (way.ordinal() + 1), () -> desk.way(way));
        }
        view.addSeparator();
        item(view, "view.card", "Card", "F2", frame::toCard);
        item(view, "view.bench", "Bench", "F3", frame::toBench);
        next = item(view, "view.next", "Next caution", "F4", () -> desk.next().open());
        view.addSeparator();
        item(view, "view.units", "Inch or metric", "ctrl U", desk::units);
        for (Look look : Look.values()) {
            item(view, "view." + look.name(), look.words(), null, () -> frame.putOn(look));
        }
        JMenu help = menu("Help", 'H');
        item(help, "help.caution", "What this caution means", "F1", frame::explain);
        item(help, "help.keys", "Keys", "shift F1", frame::keys);
    }

    void show(Screen screen) {
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

    private static JMenuItem item(
            JMenu menu, String name, String text, @org.jspecify.annotations.Nullable String key, Runnable action) {
        JMenuItem item = new JMenuItem(new AbstractAction(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
        item.setName(name);
        if (key != null) {
            item.setAccelerator(KeyStroke.getKeyStroke(key));
        }
        menu.add(item);
        return item;
    }
}

package setwright.window.view;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import setwright.window.desk.Desk;
import setwright.window.view.part.Keys;

/** The jobs that were open last, each with its key; those whose file is gone are grey. */
final class RecentMenu extends JMenu {
    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient FileMenu files;
    private transient List<Path> shown = List.of();

    RecentMenu(Desk desk, FileMenu files) {
        super("Recent jobs");
        this.desk = desk;
        this.files = files;
        setName("file.recent");
        setMnemonic('R');
        setEnabled(false);
    }

    /** Asks which are still there whenever the menu that it is in is opened. */
    void within(JMenu menu) {
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent event) {
                desk.files().present(RecentMenu.this::grey);
            }

            @Override
            public void menuDeselected(MenuEvent event) {
                // Nothing changes while nobody looks.
            }

            @Override
            public void menuCanceled(MenuEvent event) {
                // Nothing changes while nobody looks.
            }
        });
    }

    void show(List<Path> recent) {
        if (recent.equals(shown)) {
            return;
        }
        shown = recent;
        removeAll();
        for (int i = 0; i < recent.size(); i++) {
            add(item(i + 1, recent.get(i)));
        }
        setEnabled(!recent.isEmpty());
    }

    private JMenuItem item(int number, Path file) {
        JMenuItem item = new JMenuItem(
                Keys.action(number + "  " + file.getFileName() + ", " + file.getParent(), () -> files.open(file)));
        item.setName("file.recent." + number);
        item.setMnemonic((char) ('0' + number));
        item.setAccelerator(KeyStroke.getKeyStroke("ctrl shift " + number));
        return item;
    }

    private void grey(List<Path> present) {
        for (int i = 0; i < shown.size(); i++) {
            getItem(i).setEnabled(present.contains(shown.get(i)));
        }
    }
}

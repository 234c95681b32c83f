package setwright.window.view;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.jspecify.annotations.Nullable;
import setwright.window.desk.Desk;

/** Opens and saves by way of the file chooser, and asks before changes are lost. */
final class FileMenu {
    private static final String ENDING = ".setwright.json";

    private final Desk desk;
    private final Component over;

    FileMenu(Desk desk, Component over) {
        this.desk = desk;
        this.over = over;
    }

    void open() {
        unlessLost(() -> chosen(true).ifPresent(desk.files()::open));
    }

    void open(Path file) {
        unlessLost(() -> desk.files().open(file));
    }

    void practice() {
        unlessLost(desk.files()::practice);
    }

    void firstSteps() {
        unlessLost(desk.files()::firstSteps);
    }

    void save() {
        saved(() -> {});
    }

    void saveAs() {
        savedAs(() -> {});
    }

    private void saved(Runnable then) {
        Path file = desk.session().document().file();
        if (file == null) {
            savedAs(then);
        } else {
            desk.files().save(file, then);
        }
    }

    private void savedAs(Runnable then) {
        chosen(false)
                .map(FileMenu::withEnding)
                .filter(this::mayReplace)
                .ifPresent(file -> desk.files().save(file, then));
    }

    /** Goes on where the open job may go: it is saved, or the person saves it now, or does without. */
    void unlessLost(Runnable then) {
        desk.files().afterwards(() -> {
            if (desk.session().document().unsaved()) {
                ask(then);
            } else {
                then.run();
            }
        });
    }

    private void ask(Runnable then) {
        String[] answers = {"Save", "Do without the changes", "Back to the job"};
        int answer = JOptionPane.showOptionDialog(
                over,
                desk.session().document().name() + " has changes that are not saved.",
                "Setwright",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[0]);
        if (answer == 0) {
            saved(then);
        } else if (answer == 1) {
            then.run();
        }
    }

    private boolean mayReplace(Path file) {
        if (!file.toFile().exists() || file.equals(desk.session().document().file())) {
            return true;
        }
        String[] answers = {"Replace it", "Back"};
        return JOptionPane.showOptionDialog(
                        over,
                        file.getFileName()
                                + " is there already; replacing it leaves the old one beside it as a backup.",
                        "Setwright",
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.PLAIN_MESSAGE,
                        null,
                        answers,
                        answers[1])
                == 0;
    }

    private Optional<Path> chosen(boolean toOpen) {
        JFileChooser chooser = new JFileChooser(folder(desk.session().document().file()));
        chooser.setName("chooser");
        chooser.setFileFilter(new FileNameExtensionFilter("Jobs (*" + ENDING + ")", "json"));
        int answer = toOpen ? chooser.showOpenDialog(over) : chooser.showSaveDialog(over);
        return answer == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    private java.io.File folder(@Nullable Path file) {
        Path parent = file == null ? null : file.toAbsolutePath().getParent();
        return (parent == null ? desk.settings().workingFolder() : parent)
                .toAbsolutePath()
                .toFile();
    }

    private static Path withEnding(Path file) {
        return file.toString().endsWith(".json") ? file : Path.of(file + ENDING);
    }
}

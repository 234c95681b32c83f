package setwright.window.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import setwright.file.JobFile;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.window.model.Planned;
import setwright.window.state.Document;
import setwright.window.state.Notice;
import setwright.window.state.Settings;

/** Opening and saving, beside the desk; what goes wrong is told, and the job that is open stays. */
public final class FileDesk {
    private final Desk desk;
    private final Clerk clerk;

    FileDesk(Desk desk, Clerk clerk) {
        this.desk = desk;
        this.clerk = clerk;
    }

    /** Opens a job in the place of the one that is open; a file that cannot be read leaves everything as it is. */
    public void open(Path file) {
        Settings settings = desk.settings();
        clerk.give("Reading " + file.getFileName(), () -> Opening.file(file, settings), result -> {
            opened(result);
            result.opened().ifPresent(there -> desk.with(desk.settings().withRecent(file)));
        });
    }

    public void practice() {
        Settings settings = desk.settings();
        clerk.give("Reading the practice job", () -> Opening.practice(settings), this::opened);
    }

    /** The lines of the first five minutes from the beginning, on a fresh practice copy. */
    public void firstSteps() {
        desk.with(desk.settings().withLessons(true));
        practice();
    }

    private void opened(Opening.Result result) {
        result.opened().ifPresentOrElse(desk::use, () -> desk.tell(result.notice()));
    }

    /**
     * Saves the job as it is now under a name; a file that cannot be written leaves the old one as it is.
     *
     * @param then is done when it is saved; not where it could not be
     */
    public void save(Path file, Runnable then) {
        Optional<Planned> planned = desk.planned().filter(Planned::upToDate);
        Job before = desk.session().job();
        Job whole = planned.map(Planned::whole).orElse(before);
        DrawnUp drawnUp = planned.map(now -> now.plan().drawnUp()).orElse(null);
        clerk.give(
                "Writing " + file.getFileName(),
                () -> written(() -> JobFile.save(file, whole, drawnUp)),
                problem -> problem.ifPresentOrElse(why -> desk.tell(unsaved(file, why)), () -> {
                    saved(file, before, whole);
                    then.run();
                }));
    }

    private void saved(Path file, Job before, Job whole) {
        Document now = desk.session().document();
        boolean still = now.job().equals(before);
        desk.with(desk.settings().withRecent(file));
        desk.go(desk.session()
                .with(still ? now.with(now.history().restated(whole)).savedAs(file) : now.savedAs(file, whole)));
    }

    private static Notice unsaved(Path file, String why) {
        return new Notice(file.getFileName() + " could not be saved; the old file is as it was", List.of(why));
    }

    /** Does this once everything that was handed over is read and written. */
    public void afterwards(Runnable then) {
        clerk.give(clerk.doing(), () -> "", done -> then.run());
    }

    /** The recent jobs whose files are still there. */
    public void present(Consumer<List<Path>> then) {
        List<Path> recent = desk.settings().recent();
        clerk.give(
                clerk.doing(),
                () -> recent.stream().filter(Files::isRegularFile).toList(),
                then);
    }

    @FunctionalInterface
    private interface Writing {
        void write() throws IOException;
    }

    /** Why it could not be written; empty where it could. */
    private static Optional<String> written(Writing writing) {
        try {
            writing.write();
            return Optional.empty();
        } catch (IOException why) {
            return Optional.of(String.valueOf(why.getMessage()));
        }
    }
}

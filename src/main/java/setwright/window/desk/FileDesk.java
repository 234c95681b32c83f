package setwright.window.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import setwright.file.JobFile;
import setwright.job.DrawnUp;
import setwright.job.Job;
import setwright.window.model.Planned;
import setwright.window.state.Document;
import setwright.window.state.Notice;

/** Opening and saving; what goes wrong is told, and the job that is open stays. */
public final class FileDesk {
    private final Desk desk;

    FileDesk(Desk desk) {
        this.desk = desk;
    }

    /** Opens a job in the place of the one that is open; a file that cannot be read leaves everything as it is. */
    public boolean open(Path file) {
        Opening.Result result = Opening.file(file, desk.settings());
        result.opened().ifPresent(desk::use);
        if (result.opened().isEmpty()) {
            desk.tell(result.notice());
        }
        return result.opened().isPresent();
    }

    public void practice() {
        Opening.Result result = Opening.practice(desk.settings());
        result.opened().ifPresent(desk::use);
        if (result.opened().isEmpty()) {
            desk.tell(result.notice());
        }
    }

    /** Saves under a name; a file that cannot be written leaves the old one as it is. */
    public boolean save(Path file) {
        Optional<Planned> planned = desk.planned().filter(Planned::upToDate);
        Job job = planned.map(Planned::whole).orElse(desk.session().job());
        DrawnUp drawnUp = planned.map(now -> now.plan().drawnUp()).orElse(null);
        try {
            JobFile.save(file, job, drawnUp);
        } catch (IOException why) {
            String title = file.getFileName() + " could not be saved; the old file is as it was";
            desk.tell(new Notice(title, List.of(String.valueOf(why.getMessage()))));
            return false;
        }
        Document document = desk.session().document();
        Document whole = document.with(document.history().restated(job));
        desk.go(desk.session().with(whole.savedAs(file)));
        return true;
    }
}

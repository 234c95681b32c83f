package setwright.window.state;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import setwright.job.Job;

/**
 * The open job with its history and its file.
 *
 * @param file where it is saved; null for an untitled one
 * @param untitled what it is called while it has no file
 * @param saved the job as the file has it, or as the untitled one began
 */
public record Document(History history, @Nullable Path file, String untitled, Job saved) {
    public static Document opened(Path file, Job job) {
        return new Document(History.of(job), file, "", job);
    }

    public static Document untitled(String name, Job job) {
        return new Document(History.of(job), null, name, job);
    }

    public Job job() {
        return history.job();
    }

    public boolean unsaved() {
        return !job().equals(saved);
    }

    /** The file's name, or what an untitled one is called. */
    public String name() {
        return file == null || file.getFileName() == null
                ? untitled
                : file.getFileName().toString();
    }

    public Document with(History changed) {
        return new Document(changed, file, untitled, saved);
    }

    public Document savedAs(Path place) {
        return new Document(history.closed(), place, untitled, job());
    }

    /** It was saved as it was then; what was changed meanwhile is still to be saved. */
    public Document savedAs(Path place, Job then) {
        return new Document(history, place, untitled, then);
    }
}

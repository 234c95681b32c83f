package setwright.window.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.file.JobFile;
import setwright.file.JobRead;
import setwright.file.ShopPlace;
import setwright.file.ShopRead;
import setwright.file.json.Problem;
import setwright.job.Job;
import setwright.shop.Shop;
import setwright.window.state.Document;
import setwright.window.state.Notice;
import setwright.window.state.Settings;

/** Reads jobs with the shop that belongs to them. */
public final class Opening {
    private static final String PRACTICE = "practice copy";
    private static final String PACKED = "/demo-jobs/bearing-block.setwright.json";

    private Opening() {}

    /** A document, or what has to be told instead. */
    public record Result(Optional<Opened> opened, Notice notice) {
        private static Result of(Opened opened) {
            return new Result(Optional.of(opened), Notice.NONE);
        }

        private static Result refused(String title, List<Problem> problems) {
            return new Result(
                    Optional.empty(),
                    new Notice(title, problems.stream().map(Opening::line).toList()));
        }
    }

    public static Result file(Path file, Settings settings) {
        ShopRead shop = shop(settings, file.toAbsolutePath().getParent());
        if (shop instanceof ShopRead.Refused refused) {
            return Result.refused(
                    "The shop could not be read; the job that was open is still there", refused.problems());
        }
        Shop rows = ((ShopRead.Opened) shop).shop();
        JobRead read = JobFile.read(file, rows);
        if (read instanceof JobRead.Refused refused) {
            return Result.refused(
                    file.getFileName()
                            + " could not be read and was left as it is; the job that was open is still there",
                    refused.problems());
        }
        return Result.of(Opened.file(file, ((JobRead.Opened) read).job(), rows));
    }

    /** An untitled copy of the bearing block, into whose vise somebody last put parallels that are too thick. */
    public static Result practice(Settings settings) {
        ShopRead shop = shop(settings, null);
        if (shop instanceof ShopRead.Refused refused) {
            return Result.refused("The shop could not be read", refused.problems());
        }
        Shop rows = ((ShopRead.Opened) shop).shop();
        JobRead read = JobFile.read(packed(), rows);
        if (read instanceof JobRead.Refused refused) {
            return Result.refused("The practice job could not be read", refused.problems());
        }
        Job job = Practice.topAlone(((JobRead.Opened) read).job());
        Document document = Document.untitled(PRACTICE, job);
        return Result.of(new Opened(Practice.withThickParallels(document, rows), rows));
    }

    static boolean isPractice(Document document) {
        return document.file() == null && document.untitled().equals(PRACTICE);
    }

    private static ShopRead shop(Settings settings, @Nullable Path jobFolder) {
        return new ShopPlace(null, settings.shop(), jobFolder, settings.workingFolder()).read();
    }

    private static String packed() {
        try (InputStream in = Opening.class.getResourceAsStream(PACKED)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            return "";
        }
    }

    private static String line(Problem problem) {
        String place = problem.line() == 0 ? "" : "line " + problem.line() + ", column " + problem.column() + ": ";
        return place + (problem.path().isEmpty() ? "" : problem.path() + ": ") + problem.message();
    }
}

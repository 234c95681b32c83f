package setwright.window.state;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a person set for every job.
 *
 * @param shop folder of the shop; null where it is looked for beside the job
 * @param workingFolder where the program was started
 * @param person name that stands under acceptances and signatures; may be empty
 * @param look name of the look
 * @param lessons whether the lines of the first five minutes are shown on the practice copy
 * @param recent files of the jobs that were open last, the last one first
 * @param quick what stood in the quick check last
 * @param figures names of the bench figures that were asked for last, the newest first
 */
public record Settings(
        @Nullable Path shop,
        Path workingFolder,
        String person,
        String look,
        boolean lessons,
        List<Path> recent,
        QuickFields quick,
        List<String> figures) {
    /** How many recent jobs are kept. */
    public static final int MOST_RECENT = 9;

    public Settings {
        recent = List.copyOf(recent);
        figures = List.copyOf(figures);
    }

    /** With a quick check that nobody used yet. */
    public Settings(
            @Nullable Path shop, Path workingFolder, String person, String look, boolean lessons, List<Path> recent) {
        this(shop, workingFolder, person, look, lessons, recent, QuickFields.USUAL, List.of());
    }

    /** As they are before anybody set anything. */
    public static Settings first(Path workingFolder) {
        return new Settings(null, workingFolder, "", "", true, List.of(), QuickFields.USUAL, List.of());
    }

    public Settings withPerson(String changed) {
        return new Settings(shop, workingFolder, changed, look, lessons, recent, quick, figures);
    }

    public Settings withLook(String changed) {
        return new Settings(shop, workingFolder, person, changed, lessons, recent, quick, figures);
    }

    public Settings withLessons(boolean changed) {
        return new Settings(shop, workingFolder, person, look, changed, recent, quick, figures);
    }

    /** A job was opened or saved: it is the most recent one. */
    public Settings withRecent(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        List<Path> all = new ArrayList<>(recent);
        all.remove(whole);
        all.add(0, whole);
        return new Settings(
                shop,
                workingFolder,
                person,
                look,
                lessons,
                all.subList(0, Math.min(MOST_RECENT, all.size())),
                quick,
                figures);
    }

    public Settings withQuick(QuickFields changed) {
        return new Settings(shop, workingFolder, person, look, lessons, recent, changed, figures);
    }

    public Settings withFigures(List<String> changed) {
        return new Settings(shop, workingFolder, person, look, lessons, recent, quick, changed);
    }
}

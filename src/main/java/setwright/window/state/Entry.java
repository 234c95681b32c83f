package setwright.window.state;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import setwright.job.Feature;

/**
 * Drawing notes being entered.
 *
 * @param page which page is open
 * @param title texts of the title block that cannot be read yet, as typed
 * @param before features that the job has without the note that is being typed
 * @param note the note that is being typed
 * @param answers to what was asked about it so far
 * @param answer what stands in the blank that is asked now; empty for what is likely
 */
public record Entry(
        Page page,
        Map<TitleField, String> title,
        List<Feature> before,
        String note,
        List<String> answers,
        String answer) {
    public static final Entry CLOSED = new Entry(Page.CLOSED, Map.of(), List.of(), "", List.of(), "");

    /** What the page shows. */
    public enum Page {
        CLOSED,
        NEW_JOB,
        NOTES
    }

    /** What the title block asks. */
    public enum TitleField {
        BLANK("Blank, as 100x60x25"),
        MATERIAL("Material"),
        OFF("Number off"),
        UNITS("Units"),
        PART("Part"),
        DRAWING("Drawing");

        private final String words;

        TitleField(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Entry {
        Map<TitleField, String> ordered = new EnumMap<>(TitleField.class);
        ordered.putAll(title);
        title = Collections.unmodifiableMap(ordered);
        before = List.copyOf(before);
        answers = List.copyOf(answers);
    }

    /** A page on a job of which nothing is typed yet. */
    public static Entry on(Page page, List<Feature> features) {
        return new Entry(page, Map.of(), features, "", List.of(), "");
    }

    public boolean open() {
        return page != Page.CLOSED;
    }

    /** The next note, after those that the job has now. */
    public Entry next(List<Feature> features) {
        return new Entry(page, title, features, "", List.of(), "");
    }

    public Entry typing(String text) {
        return new Entry(page, title, before, text, List.of(), "");
    }

    public Entry answering(String text) {
        return new Entry(page, title, before, note, answers, text);
    }

    public Entry answered(List<String> all) {
        return new Entry(page, title, before, note, all, "");
    }

    public Entry with(TitleField field, String text) {
        Map<TitleField, String> changed = new EnumMap<>(TitleField.class);
        changed.putAll(title);
        changed.put(field, text);
        return new Entry(page, changed, before, note, answers, answer);
    }
}

package setwright.window.model;

import java.util.List;
import setwright.job.note.NoteRead;
import setwright.window.state.Entry;

/**
 * The page on which drawing notes are entered.
 *
 * @param title fields of the title block; empty where the job has one already
 * @param complaint why the title block cannot be read; empty where it can
 * @param readBack the title block as a sentence
 * @param notes those that the job has, each with the sentence that reads it back
 * @param note what stands in the note's line
 * @param sentence that reads the note back; empty where it cannot be read
 * @param refused why the note cannot be read; empty where it can
 * @param asks what is missing, as a question; empty where nothing is
 * @param answer what stands in its blank: as typed, else what is likely
 * @param offers two readings or more, of which one is picked
 */
public record EntryPage(
        Entry.Page page,
        List<Field> title,
        String complaint,
        String readBack,
        List<Noted> notes,
        String note,
        String sentence,
        String refused,
        String asks,
        String answer,
        List<NoteRead.Offer> offers) {
    public static final EntryPage CLOSED =
            new EntryPage(Entry.Page.CLOSED, List.of(), "", "", List.of(), "", "", "", "", "", List.of());

    public EntryPage {
        title = List.copyOf(title);
        notes = List.copyOf(notes);
        offers = List.copyOf(offers);
    }

    /** A note that stands, and what it says. */
    public record Noted(String note, String sentence) {}

    public boolean open() {
        return page != Entry.Page.CLOSED;
    }
}

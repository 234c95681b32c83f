package setwright.window.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.job.Feature;
import setwright.job.JobPlan;
import setwright.job.note.NoteContext;
import setwright.job.note.NoteRead;
import setwright.job.note.Notes;
import setwright.window.state.Entry;

/**
 * The note that is being typed, read against the job as it is without it.
 *
 * @param read what came of it, with the answers given so far
 * @param likely what comes of it with every further likely answer taken
 */
public record NoteState(Entry entry, NoteRead<List<Feature>> read, NoteRead<List<Feature>> likely) {
    public static NoteState of(Entry entry, JobPlan plan) {
        NoteContext context = new NoteContext(plan.units(), plan.blank(), entry.before());
        return new NoteState(
                entry,
                Notes.read(entry.note(), entry.answers(), context),
                Notes.likely(entry.note(), drawn(entry), context));
    }

    /** For the picture the blank that is being filled counts as an answer. */
    private static List<String> drawn(Entry entry) {
        return entry.answer().isBlank()
                ? entry.answers()
                : Stream.concat(entry.answers().stream(), Stream.of(entry.answer()))
                        .toList();
    }

    public boolean empty() {
        return entry.note().isBlank();
    }

    /** Whether it says all that is needed. */
    public boolean complete() {
        return !empty() && read.kind() == NoteRead.Kind.ONE;
    }

    /** The features of the job with those of the note, where there is anything to draw. */
    public Optional<List<Feature>> features() {
        return !empty() && likely instanceof NoteRead.One<List<Feature>> one
                ? Optional.of(Stream.concat(entry.before().stream(), one.value().stream())
                        .toList())
                : Optional.empty();
    }

    String sentence() {
        return !empty() && likely instanceof NoteRead.One<List<Feature>> one ? one.sentence() : "";
    }

    /** A blank that is filled with something unreadable is refused like a note. */
    String refused() {
        if (!empty() && read instanceof NoteRead.Refused<List<Feature>> refused) {
            return refused.message();
        }
        boolean filling = !entry.answer().isBlank();
        return filling && likely instanceof NoteRead.Refused<List<Feature>> refused ? refused.message() : "";
    }

    String asks() {
        return !empty() && read instanceof NoteRead.Missing<List<Feature>> missing
                ? missing.question().asks()
                : "";
    }

    /** What is likely in the blank that is asked; empty where nothing is. */
    public String likelyAnswer() {
        return read instanceof NoteRead.Missing<List<Feature>> missing
                ? missing.question().likely()
                : "";
    }

    public List<NoteRead.Offer> offers() {
        return !empty() && read instanceof NoteRead.Several<List<Feature>> several ? several.offers() : List.of();
    }

    /** Whether the answer given last made it unreadable. */
    public boolean refusedAnswer() {
        return !entry.answers().isEmpty() && read.kind() == NoteRead.Kind.REFUSED;
    }
}

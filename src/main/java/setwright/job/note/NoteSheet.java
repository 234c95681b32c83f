package setwright.job.note;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Feature;
import setwright.job.note.NoteRead.Kind;
import setwright.job.note.NoteRead.One;

/** Several notes, one a line; a line that only says where something is completes the note above it. */
public record NoteSheet(List<Line> lines) {
    public NoteSheet {
        lines = List.copyOf(lines);
    }

    /**
     * A note of the sheet.
     *
     * @param number of its first line, from one
     * @param note that line, as typed
     * @param text the note with the lines that complete it; what {@link Notes#read(String, List, NoteContext)} takes
     * @param read what came of it, nothing answered
     * @param likely what comes of it with every likely answer taken
     */
    public record Line(
            int number, String note, String text, NoteRead<List<Feature>> read, NoteRead<List<Feature>> likely) {}

    public static NoteSheet read(String text, NoteContext context) {
        List<Line> lines = new ArrayList<>();
        NoteContext before = context;
        NoteContext now = context;
        String[] typed = text.split("\\R", -1);
        for (int i = 0; i < typed.length; i++) {
            Line last = lines.isEmpty() ? null : lines.get(lines.size() - 1);
            boolean follows = last != null && last.read().kind() == Kind.MISSING && Notes.onlyPlaces(typed[i], now);
            if (follows && last != null) {
                lines.set(
                        lines.size() - 1,
                        line(last.number(), last.note(), last.text() + ", " + typed[i].strip(), before));
                now = before.with(features(lines.get(lines.size() - 1).likely()));
            } else if (!typed[i].isBlank()) {
                before = now;
                lines.add(line(i + 1, typed[i].strip(), typed[i].strip(), before));
                now = before.with(features(lines.get(lines.size() - 1).likely()));
            }
        }
        return new NoteSheet(lines);
    }

    private static Line line(int number, String note, String text, NoteContext context) {
        return new Line(
                number,
                note,
                text,
                Notes.read(text, note, List.of(), context),
                Notes.likely(text, note, List.of(), context));
    }

    /** The features of all notes, those that lack something with what is likely; refused notes and open offers left out. */
    public List<Feature> features() {
        return lines.stream().flatMap(line -> features(line.likely()).stream()).toList();
    }

    private static List<Feature> features(NoteRead<List<Feature>> read) {
        return read instanceof One<List<Feature>> one ? one.value() : List.of();
    }
}

package setwright.job.note;

import java.util.ArrayList;
import java.util.List;
import setwright.job.Feature;
import setwright.job.note.NoteRead.Kind;
import setwright.job.note.NoteRead.Missing;
import setwright.job.note.NoteRead.Offer;
import setwright.job.note.NoteRead.One;
import setwright.job.note.NoteRead.Several;
import setwright.quantity.Reading;
import setwright.quantity.UnitSystem;

/** Reads drawing notes. A text of any kind is read or refused, nothing is thrown. */
public final class Notes {
    private static final int LONGEST = 200;
    private static final int MOST_ANSWERS = 12;

    private static final List<String> EXAMPLES = List.of(
            "4x M6 thru",
            "76x36",
            "#7 thru",
            "10 H7 thru",
            "1/4-20 x 1/2 deep",
            "cbore 11 x 6.5 on 6.6 thru",
            "csk 12 x 90 on 6 thru",
            "spotface 20 x 1 on 10 thru",
            "6x 9 thru on 80 BC",
            "bore 52 H7 thru",
            "slot 12 x 8 deep",
            "slot 12 x 8 x 40 long",
            "pocket 40x30x10 R6",
            "step 10 x 5 left",
            "keyseat 8 x 4 x 40 long",
            "T-slot 12",
            "dovetail 40 x 10 60 deg",
            "flats 2x 30 x 20 long",
            "slit 2 thru",
            "chamfer 1 x 45",
            "face to 20",
            "top to 38 +0/-0.1",
            "square all over",
            "60 graduations on 120, 0.3 deep x 5 long, 8 long every 10",
            "6 splines 6 wide x 3 deep on 30",
            "24 teeth module 2");

    private Notes() {}

    /** Reads one note. */
    public static NoteRead<List<Feature>> read(String note, NoteContext context) {
        return read(note, List.of(), context);
    }

    /**
     * Reads one note with answers: each fills the blank that is asked next, or picks an offer by its note. The features
     * keep the note as it was typed, without the answers.
     */
    public static NoteRead<List<Feature>> read(String note, List<String> answers, NoteContext context) {
        return read(note, note, answers, context);
    }

    /** The same where the text that is read is longer than the note that is kept. */
    static NoteRead<List<Feature>> read(String text, String note, List<String> answers, NoteContext context) {
        NoteRead<List<Feature>> read = once(text, note, context);
        for (String answer : answers) {
            String next = answered(read, answer);
            if (next.isEmpty()) {
                return read;
            }
            read = once(next, note, context);
        }
        return read;
    }

    /** Reads a note and takes every likely answer, for drawing it before it is answered; offers are left open. */
    public static NoteRead<List<Feature>> likely(String note, List<String> answers, NoteContext context) {
        return likely(note, note, answers, context);
    }

    static NoteRead<List<Feature>> likely(String text, String note, List<String> answers, NoteContext context) {
        List<String> all = new ArrayList<>(answers);
        NoteRead<List<Feature>> read = read(text, note, all, context);
        while (read.kind() == Kind.MISSING && all.size() < answers.size() + MOST_ANSWERS) {
            String likely = ((Missing<?>) read).question().likely();
            if (likely.isEmpty()) {
                return read;
            }
            all.add(likely);
            read = read(text, note, all, context);
        }
        return read;
    }

    /** The text with an answer; empty where nothing was asked or answered. */
    private static String answered(NoteRead<?> read, String answer) {
        return switch (read.kind()) {
            case MISSING ->
                answer.isBlank() ? "" : ((Missing<?>) read).question().with(answer);
            case SEVERAL ->
                ((Several<?>) read)
                        .offers().stream()
                                .map(Offer::note)
                                .filter(answer::equals)
                                .findFirst()
                                .orElse("");
            case ONE, REFUSED -> "";
        };
    }

    private static NoteRead<List<Feature>> once(String text, String note, NoteContext context) {
        try {
            if (text.length() > LONGEST) {
                throw Halt.refused(
                        "A note of more than " + LONGEST + " letters is not read; write several.", 0, text.length());
            }
            Draft draft = draft(text, note, context);
            List<Feature> features = Makers.features(draft);
            features.forEach(feature -> Within.blank(feature, context));
            return new One<>(features, sentence(features, context));
        } catch (Halt halt) {
            return halt.read();
        }
    }

    private static String sentence(List<Feature> features, NoteContext context) {
        return features.size() == 6
                ? "Every side faced to the sizes of the blank"
                : new Spoken(context.units()).all(features);
    }

    private static Draft draft(String text, String typed, NoteContext context) {
        List<Piece> pieces = Units.shared(Pieces.of(text));
        if (pieces.isEmpty()) {
            throw Halt.refused("Nothing is written; a note is, for instance, 4x M6 thru.", 0, 0);
        }
        Fractions.offer(text, pieces, context.units());
        boolean inch = context.units() == UnitSystem.INCH || Fractions.sayInch(pieces);
        Numbers numbers = new Numbers(new Reading(context.units()), inch);
        return Clauses.fill(new Draft(text, typed.strip(), context, numbers), pieces);
    }

    /** Whether a text only says where something is, so that it completes the note before it. */
    static boolean onlyPlaces(String text, NoteContext context) {
        try {
            return text.length() <= LONGEST && draft(text, text, context).onlyPlaces();
        } catch (Halt unread) {
            return false;
        }
    }

    /** One note of each kind, for a line of help. */
    public static List<String> examples() {
        return EXAMPLES;
    }
}

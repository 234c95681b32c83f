package setwright.job.note;

import java.util.List;

/**
 * What came of reading a text: one reading, several of which a person picks one, a part that is missing, or a refusal.
 *
 * @param <T> what is read: a blank, or the features of a note
 */
public sealed interface NoteRead<T> {
    Kind kind();

    /** What came of it. */
    enum Kind {
        ONE,
        SEVERAL,
        MISSING,
        REFUSED
    }

    /** One reading, and the sentence that reads it back. */
    record One<T>(T value, String sentence) implements NoteRead<T> {
        @Override
        public Kind kind() {
            return Kind.ONE;
        }
    }

    /** The text may mean more than one thing. */
    record Several<T>(List<Offer> offers) implements NoteRead<T> {
        public Several {
            offers = List.copyOf(offers);
        }

        @Override
        public Kind kind() {
            return Kind.SEVERAL;
        }
    }

    /**
     * One of several readings.
     *
     * @param sentence what it would mean
     * @param note the text written so that it means this only; given as an answer it picks this reading
     */
    record Offer(String sentence, String note) {}

    /** Understood so far, but something is missing. */
    record Missing<T>(Question question) implements NoteRead<T> {
        @Override
        public Kind kind() {
            return Kind.MISSING;
        }
    }

    /**
     * Not understood, or it does not fit the blank.
     *
     * @param message which piece, where it stands and what would be accepted
     * @param from place of the first letter of the piece, counted from nought
     * @param to place behind its last letter
     */
    record Refused<T>(String message, int from, int to) implements NoteRead<T> {
        @Override
        public Kind kind() {
            return Kind.REFUSED;
        }
    }
}

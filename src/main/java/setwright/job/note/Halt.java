package setwright.job.note;

/** Reading stops here with a refusal, a question or offers; never leaves this room. */
final class Halt extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient NoteRead<?> read;

    private Halt(NoteRead<?> read) {
        super("", null, false, false);
        this.read = read;
    }

    static Halt refused(String message, Piece piece) {
        return refused(message, piece.from(), piece.to());
    }

    static Halt refused(String message, int from, int to) {
        return new Halt(new NoteRead.Refused<>(message, from, to));
    }

    static Halt missing(Question question) {
        return new Halt(new NoteRead.Missing<>(question));
    }

    static Halt several(java.util.List<NoteRead.Offer> offers) {
        return new Halt(new NoteRead.Several<>(offers));
    }

    /** What came of the reading; it holds no value, so that it is of any type. */
    @SuppressWarnings("unchecked")
    <T> NoteRead<T> read() {
        return (NoteRead<T>) read;
    }
}

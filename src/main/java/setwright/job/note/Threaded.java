package setwright.job.note;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.job.Size;
import setwright.job.note.Draft.Said;
import setwright.job.note.Measured.Role;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.quantity.Unreadable;
import setwright.quantity.thread.ScrewThread;
import setwright.quantity.thread.ScrewThread.Series;
import setwright.quantity.thread.Threads;

/** The thread of a note with what stands joined to it: its pitch, its depth. */
final class Threaded {
    private static final String FORM = "thread x depth, as M8 x 20 deep";

    private final Draft draft;
    private final Piece piece;
    private final ScrewThread thread;
    private final @Nullable Size depth;

    Threaded(Draft draft, Piece piece) {
        this.draft = draft;
        this.piece = piece;
        List<Measured> chain = draft.chains.get(0);
        boolean metric = Character.toUpperCase(piece.text().charAt(0)) == 'M';
        ScrewThread pitched = metric && !chain.isEmpty() ? pitched(chain) : null;
        this.thread = pitched == null ? read(piece, base()) : pitched;
        List<Measured> rest = pitched == null ? chain : chain.subList(1, chain.size());
        this.depth = Roles.of(rest, List.of(Role.DEPTH), FORM).size(Role.DEPTH);
    }

    Size size() {
        boolean inch = thread.series().isInch();
        String size = thread.designation().split(inch ? "-\\d+$" : "x", -1)[0];
        return Size.of(inch ? inch(size) : new Reading(UnitSystem.METRIC).length(size.substring(1)));
    }

    private static Typed<Length> inch(String size) {
        boolean numbered = size.startsWith("#");
        String text = numbered
                ? new BigDecimal("0.013")
                        .multiply(new BigDecimal(size.substring(1)))
                        .add(new BigDecimal("0.060"))
                        .toPlainString()
                : size;
        return new Reading(UnitSystem.INCH).length(text);
    }

    String designation() {
        return thread.designation();
    }

    @Nullable
    Size depth() {
        return depth;
    }

    /** The thread with a pitch that stands behind it; null where the number behind it is no pitch. */
    private @Nullable ScrewThread pitched(List<Measured> chain) {
        Measured first = chain.get(0);
        if (first.role() != Role.UNSAID || first.size() == null || first.size().toleranced()) {
            return null;
        }
        Optional<ScrewThread> found = threadOf(base() + "x" + first.number().text());
        boolean listed = found.isPresent() && found.get().series() != Series.ISO_OTHER;
        boolean deepToo = chain.size() > 1 || draft.says(Said.THROUGH);
        if (found.isEmpty() || (!listed && !deepToo)) {
            return null;
        }
        boolean fine = found.get().series() == Series.ISO_FINE;
        boolean spaced = !first.number().touches(piece) && draft.note.charAt(piece.to()) == ' ';
        if (fine && spaced && !deepToo) {
            throw Halt.several(offers(first));
        }
        return found.get();
    }

    private List<NoteRead.Offer> offers(Measured pitch) {
        String before = draft.note.substring(0, piece.from());
        String behind = draft.note.substring(pitch.to());
        String number = pitch.number().text();
        String size = base();
        return List.of(
                new NoteRead.Offer(
                        "thread " + size + "x" + number + ", fine pitch of " + number + " mm",
                        before + size + "x" + number + behind),
                new NoteRead.Offer(
                        "thread " + size + " of coarse pitch, "
                                + pitch.length().nominal().text() + " deep",
                        before + size + " x " + number + " deep" + behind));
    }

    private String base() {
        String text = piece.text().toUpperCase(Locale.ROOT);
        return text.startsWith("M") ? text.replaceAll("\\s", "") : text;
    }

    private Optional<ScrewThread> threadOf(String designation) {
        try {
            return Optional.of(Threads.listed().read(designation));
        } catch (Unreadable notRead) {
            return Optional.empty();
        }
    }

    /** A number size may stand without its sign: 10-32 is #10-32 where that is listed. */
    private ScrewThread read(Piece piece, String designation) {
        String plain = designation.replaceFirst("^(\\d+) (\\d+/)", "$1-$2");
        if (plain.matches("\\d+-.*") && !plain.matches("\\d+-\\d+/.*")) {
            Optional<ScrewThread> numbered = threadOf("#" + plain);
            if (numbered.isPresent() && numbered.get().series() != Series.UN_OTHER) {
                return numbered.get();
            }
        }
        return Numbers.guarded(piece, () -> Threads.listed().read(plain));
    }
}

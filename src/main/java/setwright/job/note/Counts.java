package setwright.job.note;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.job.note.Draft.Said;
import setwright.job.note.Piece.Kind;

/** Reads how many of a thing there are, before it or behind it. */
final class Counts {
    private final Draft draft;
    private final Cursor cursor;

    Counts(Draft draft, Cursor cursor) {
        this.draft = draft;
        this.cursor = cursor;
    }

    void leading() {
        Piece first = cursor.look();
        Piece next = cursor.look(1);
        if (first == null || next == null || !whole(first)) {
            return;
        }
        boolean counting = cursor.follows(1, Kind.THREAD) || isPlural(next);
        boolean times = next.sign("x") && countBehindTimes(first, next, cursor.look(2));
        if (counting || times) {
            cursor.take();
            cursor.passesSign("x");
            take(first);
        }
    }

    private static boolean countBehindTimes(Piece first, Piece times, @Nullable Piece behind) {
        return behind != null && (!behind.is(Kind.NUMBER) || (times.touches(first) && !behind.touches(times)));
    }

    private static boolean isPlural(Piece word) {
        return word.is(Kind.WORD)
                && List.of(
                                "off",
                                "holes",
                                "places",
                                "flats",
                                "graduations",
                                "grads",
                                "divisions",
                                "teeth",
                                "splines",
                                "slots",
                                "pockets",
                                "steps",
                                "chamfers",
                                "slits",
                                "no")
                        .contains(word.text());
    }

    void take(Piece piece) {
        int count = Integer.parseInt(piece.text());
        if (count < 1 || count > 1_000) {
            throw Halt.refused(Saying.at(piece) + " is no count; 1 to 1000 are accepted.", piece);
        }
        draft.count = count;
    }

    static boolean whole(Piece piece) {
        return piece.is(Kind.NUMBER) && piece.text().matches("\\d{1,6}");
    }

    /** A count that stands behind: {@code 4 off}, {@code 6x on 80 BC}. */
    boolean trailing() {
        Piece number = cursor.look();
        Piece word = cursor.look(1);
        if (number == null || word == null || !whole(number)) {
            return false;
        }
        Piece behind = cursor.look(2);
        boolean times = word.sign("x")
                && (behind == null || !(behind.is(Kind.NUMBER) || behind.is(Kind.SIGN) || behind.word("dia")));
        boolean counts = times || (isPlural(word) && !word.word("flats") && !word.word("no"));
        if (counts && draft.count > 0) {
            throw Halt.refused(Saying.at(number) + " is a second count; one a note is accepted.", number);
        }
        if (counts) {
            cursor.take();
            cursor.take();
            take(number);
        }
        return counts;
    }

    boolean rows() {
        Piece first = cursor.look();
        Piece word = cursor.look(1);
        if (first == null || word == null || !whole(first)) {
            return false;
        }
        boolean rows = word.word("rows") || word.word("row");
        if (rows) {
            draft.said.put(Said.ROWS, first);
            draft.rows = Integer.parseInt(first.text());
            cursor.take();
            cursor.take();
        }
        return rows;
    }
}

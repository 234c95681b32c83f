package setwright.job.note;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.job.note.Piece.Kind;

/** Goes through the pieces of a note. */
final class Cursor {
    private final List<Piece> pieces;
    private int at;

    Cursor(List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    boolean atEnd() {
        return at == pieces.size();
    }

    /** The piece so many places on; null behind the last and before the first. */
    @Nullable
    Piece look(int on) {
        int place = at + on;
        return place >= 0 && place < pieces.size() ? pieces.get(place) : null;
    }

    @Nullable
    Piece look() {
        return look(0);
    }

    boolean follows(Kind kind) {
        return follows(0, kind);
    }

    boolean follows(int on, Kind kind) {
        Piece piece = look(on);
        return piece != null && piece.is(kind);
    }

    boolean followsSign(int on, String sign) {
        Piece piece = look(on);
        return piece != null && piece.sign(sign);
    }

    Piece take() {
        return pieces.get(at++);
    }

    /** The piece taken last. */
    Piece last() {
        return pieces.get(at - 1);
    }

    /** Whether this sign stands here; it is passed if it does. */
    boolean passesSign(String sign) {
        boolean here = followsSign(0, sign);
        at += here ? 1 : 0;
        return here;
    }

    /** Whether one of these phrases stands here, words joined by blanks; it is passed if it does. */
    boolean passes(String... phrases) {
        for (String phrase : phrases) {
            int length = length(phrase);
            if (length > 0) {
                at += length;
                return true;
            }
        }
        return false;
    }

    /** How many pieces a phrase takes here; nought where it does not stand here. */
    private int length(String phrase) {
        List<String> words = List.of(phrase.split(" ", -1));
        for (int i = 0; i < words.size(); i++) {
            Piece piece = look(i);
            if (piece == null || !piece.word(words.get(i))) {
                return 0;
            }
        }
        return words.size();
    }
}

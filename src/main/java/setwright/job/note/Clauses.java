package setwright.job.note;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import setwright.job.Size;
import setwright.job.note.Draft.Said;
import setwright.job.note.Measured.Role;
import setwright.job.note.Piece.Kind;
import setwright.quantity.Length;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;

/** Goes through the clauses of a note in whatever order they stand and puts them in a draft. */
final class Clauses {
    private static final List<String> FILLERS = List.of(
            "the",
            "a",
            "an",
            "of",
            "with",
            "and",
            "all",
            "round",
            "over",
            "face",
            "side",
            "end",
            "edge",
            "along",
            "typ",
            "off",
            "places",
            "place",
            "pl",
            "plcs",
            "no",
            "equally",
            "spaced",
            "equal",
            "eq",
            "sp",
            "rectangle",
            "rect",
            "is",
            "long",
            "about",
            "by",
            "holes",
            "hole",
            "letter",
            "per",
            "blind",
            "female");

    private final Draft draft;
    private final Cursor cursor;
    private final Counts counts;
    private final Placing placing;
    private boolean joined;
    private boolean intoMouth;

    private Clauses(Draft draft, Cursor cursor) {
        this.draft = draft;
        this.cursor = cursor;
        this.counts = new Counts(draft, cursor);
        this.placing = new Placing(draft, cursor, this::hole);
    }

    /** Fills a draft that is empty. */
    static Draft fill(Draft draft, List<Piece> pieces) {
        new Clauses(draft, new Cursor(pieces)).all();
        return draft;
    }

    private void all() {
        counts.leading();
        while (!cursor.atEnd()) {
            if (!clause()) {
                throw unknown(cursor.take());
            }
        }
        if (joined) {
            throw Halt.refused(Saying.at(cursor.last()) + " wants a size behind it, as 12 x 8.", cursor.last());
        }
    }

    private boolean clause() {
        return joint()
                || new Divides(draft, cursor).clause()
                || named()
                || size()
                || flag()
                || placing.clause()
                || lesser();
    }

    private boolean joint() {
        Piece piece = cursor.look();
        if (piece != null && piece.sign("x")) {
            boolean behindSize = cursor.look(-1) != null && !chains().isEmpty();
            if (!behindSize || joined) {
                throw unknown(piece);
            }
            cursor.take();
            joined = true;
            return true;
        }
        return false;
    }

    private boolean named() {
        if (cursor.follows(Kind.THREAD)) {
            if (draft.thread != null) {
                throw Halt.refused(
                        Saying.at(cursor.take()) + " is a second thread; one a note is accepted.", cursor.last());
            }
            if (!draft.chains.isEmpty()) {
                throw Halt.refused(
                        Saying.at(cursor.take()) + " stands behind a size; a thread comes first, as M8 x 20 deep.",
                        cursor.last());
            }
            draft.thread = cursor.take();
            intoMouth = false;
            draft.chains.add(new ArrayList<>());
            return true;
        }
        if (cursor.follows(Kind.CLASS)) {
            cursor.take();
            return true;
        }
        return head();
    }

    private boolean head() {
        Head found = Head.passed(cursor);
        if (found == null) {
            return false;
        }
        if (found.isMouth()) {
            draft.mouth = found;
            draft.mouthAt = cursor.last().to();
            intoMouth = true;
            return true;
        }
        Head before = draft.head;
        if (before != null && !(before.isHole() && found.isHole())) {
            throw Halt.refused(
                    Saying.at(cursor.last()) + " stands in a note of a " + before.called()
                            + "; write a note of its own for it.",
                    cursor.last());
        }
        draft.head = found == Head.HOLE && before != null ? before : found;
        boolean countFollows = cursor.followsSign(1, "x") && draft.count == 0 && found == Head.FLATS;
        if (countFollows && cursor.look() != null && Counts.whole(cursor.look())) {
            counts.take(cursor.take());
            cursor.passesSign("x");
        }
        return true;
    }

    private boolean size() {
        if ((!joined && counts.trailing()) || counts.rows()) {
            return true;
        }
        Measured found = Numbers.follow(cursor) ? draft.numbers.next(cursor) : letterDrill();
        if (found == null) {
            return false;
        }
        if (cursor.passes("pitch", "apart", "spacing", "ctrs", "crs", "centers", "centres")) {
            draft.pitch.add(found);
            say(Said.PITCH);
        } else if (cursor.passes("bc", "pcd", "bolt circle", "circle", "pitch circle", "b.c")) {
            draft.circle = found;
            say(Said.CIRCLE);
        } else {
            chained(found);
        }
        return true;
    }

    private @Nullable Measured letterDrill() {
        Piece piece = cursor.look();
        boolean letter =
                piece != null && piece.is(Kind.WORD) && piece.text().length() == 1 && !cursor.follows(1, Kind.NUMBER);
        boolean wanted = draft.thread == null && draft.chains.isEmpty() && (draft.head == null || draft.head.isHole());
        if (piece == null || !letter || !wanted || piece.text().equals("µ")) {
            return null;
        }
        cursor.take();
        String name = piece.text().toUpperCase(Locale.ROOT);
        Typed<Length> size =
                Numbers.guarded(piece, () -> draft.numbers.reading().length(name));
        return new Measured(piece, Size.of(size), null, null, Role.UNSAID, piece.to());
    }

    private List<List<Measured>> chains() {
        return intoMouth ? draft.mouthChains : draft.chains;
    }

    private void chained(Measured found) {
        if (found.angle() != null && !joined) {
            draft.angle = found.angle();
            say(Said.ANGLE);
            return;
        }
        boolean ofFirst = found.role() != Role.UNSAID && !chains().isEmpty();
        boolean follows = (joined && !chains().isEmpty()) || ofFirst;
        if (!follows) {
            chains().add(new ArrayList<>());
        }
        chains().get(ofFirst && !joined ? 0 : chains().size() - 1).add(found);
        joined = false;
    }

    private void hole(Measured size) {
        intoMouth = false;
        chained(size);
    }

    private boolean flag() {
        Said found = Flags.passed(cursor);
        if (found != null) {
            say(found);
        }
        return found != null;
    }

    private boolean lesser() {
        if (cursor.passes("r", "rad", "radius", "corner radius", "corners")) {
            say(Said.RADIUS);
            draft.radius = draft.numbers.length(number("R6"));
            return true;
        }
        if (cursor.passes("ra")) {
            say(Said.FINISH);
            draft.finish = finish(number("Ra 1.6"));
            return true;
        }
        return separator() || cursor.passes(FILLERS.toArray(new String[0]));
    }

    private Piece number(String example) {
        Piece word = cursor.last();
        if (!cursor.follows(Kind.NUMBER)) {
            throw Halt.refused(Saying.at(word) + " wants a number behind it, as " + example + ".", word);
        }
        return cursor.take();
    }

    /** A roughness: a bare number is micrometres, for inch people microinches. */
    private Typed<Length> finish(Piece number) {
        Reading reading = draft.numbers.reading();
        if (!number.text().matches("[0-9]*\\.?[0-9]+") || number.text().length() > 9) {
            throw Halt.refused(Saying.at(number) + " is no roughness; a plain number is, as Ra 1.6.", number);
        }
        cursor.passes("µm", "um", "µin", "uin", "microns");
        BigDecimal millionths = new BigDecimal(number.text()).movePointLeft(6);
        String text = reading.bare() == UnitSystem.INCH
                ? millionths.stripTrailingZeros().toPlainString() + " in"
                : number.text() + " µm";
        return Numbers.guarded(number, () -> reading.length(text));
    }

    private boolean separator() {
        Piece comma = cursor.look();
        if (comma == null || !comma.is(Kind.SIGN) || !",;.:()'".contains(comma.text())) {
            return false;
        }
        Piece before = cursor.look(-1);
        Piece behind = cursor.look(1);
        if (before != null && behind != null && isDecimal(before, comma, behind)) {
            throw Halt.refused(
                    "\"" + before.text() + "," + behind.text() + "\" at place " + (before.from() + 1)
                            + " has a comma; the decimal sign is a point, so write " + before.text() + "."
                            + behind.text() + ".",
                    before.from(),
                    behind.to());
        }
        cursor.take();
        return true;
    }

    private static boolean isDecimal(Piece before, Piece comma, Piece behind) {
        boolean numbers = before.is(Kind.NUMBER) && behind.is(Kind.NUMBER);
        return numbers && comma.sign(",") && comma.touches(before) && behind.touches(comma);
    }

    private void say(Said what) {
        say(what, cursor.last());
    }

    private void say(Said what, Piece piece) {
        draft.said.put(what, piece);
    }

    private Halt unknown(Piece piece) {
        String about = draft.head == null && draft.mouth == null && draft.thread == null && draft.chains.isEmpty()
                ? "a note begins with what it is about, as 4x M6 thru, 10 H7 thru, slot 12 x 8 deep or pocket 40x30x10 R6"
                : "a size, thru, a depth (8 deep), a place (centred, at 30, 12), a side (on front) or a finish (Ra 1.6) is accepted";
        return Halt.refused(Saying.at(piece) + " is not understood here; " + about + ".", piece);
    }
}

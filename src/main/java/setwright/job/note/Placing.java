package setwright.job.note;

import java.util.function.Consumer;
import setwright.geometry.Side;
import setwright.job.Pattern.Place;
import setwright.job.note.Draft.Said;
import setwright.job.note.Piece.Kind;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** Reads where a thing is: its place, its side, a pitch, a circle. */
final class Placing {
    private final Draft draft;
    private final Cursor cursor;
    private final Consumer<Measured> hole;

    /** @param hole takes the size of the hole that a mouth is on */
    Placing(Draft draft, Cursor cursor, Consumer<Measured> hole) {
        this.draft = draft;
        this.cursor = cursor;
        this.hole = hole;
    }

    boolean clause() {
        if (cursor.passes("at") || cursor.passesSign("@")) {
            at();
            return true;
        }
        if (cursor.passes("turned", "tilted")) {
            if (!cursor.follows(Kind.NUMBER)) {
                throw Halt.refused(
                        Saying.at(cursor.last()) + " wants an angle behind it, as turned 30 deg.", cursor.last());
            }
            draft.turned = turned(cursor.take());
            say(Said.TURNED);
            return true;
        }
        if (cursor.passes("pitch", "spacing", "spaced")) {
            pitch();
            return true;
        }
        if (cursor.passes("on", "from", "in", "into")) {
            on(cursor.last());
            return true;
        }
        return sideWord();
    }

    private void at() {
        if (cursor.passes("centre", "center", "the middle", "middle", "the centre", "the center")) {
            say(Said.CENTRED);
            return;
        }
        Piece number = cursor.look();
        if (number != null && number.is(Kind.NUMBER) && Numbers.isAngle(number)) {
            draft.turned = turned(cursor.take());
            say(Said.TURNED);
            return;
        }
        say(Said.PLACE);
        do {
            Typed<Length> u = draft.numbers.place(cursor);
            if (!cursor.passesSign(",")) {
                cursor.passesSign("x");
            }
            draft.places.add(new Place(u, draft.numbers.place(cursor)));
        } while (another());
    }

    private Typed<Angle> turned(Piece number) {
        return Numbers.guarded(number, () -> draft.numbers.reading().angle(number.text()));
    }

    private boolean another() {
        boolean separated = cursor.followsSign(0, ";") || cursor.followsSign(0, ",") || text(0).equals("and");
        boolean number =
                cursor.follows(1, Kind.NUMBER) || (cursor.followsSign(1, "-") && cursor.follows(2, Kind.NUMBER));
        boolean goesOn = separated && number && !isPitch(cursor);
        if (goesOn) {
            cursor.take();
        }
        return goesOn;
    }

    private static boolean isPitch(Cursor cursor) {
        Piece behind = cursor.look(2);
        return behind != null && (behind.word("pitch") || behind.word("deep") || behind.sign("x"));
    }

    private String text(int on) {
        Piece piece = cursor.look(on);
        return piece == null ? "" : piece.text();
    }

    private void pitch() {
        if (!Numbers.follow(cursor)) {
            throw Halt.refused(Saying.at(cursor.last()) + " wants a distance behind it, as pitch 25.", cursor.last());
        }
        say(Said.PITCH);
        draft.pitch.add(draft.numbers.next(cursor));
        if (cursor.followsSign(0, "x") && cursor.follows(1, Kind.NUMBER)) {
            cursor.take();
            draft.pitch.add(draft.numbers.next(cursor));
        }
    }

    private void on(Piece preposition) {
        cursor.passes("the", "a");
        if (preposition.word("on") && Numbers.follow(cursor)) {
            onSize();
        } else if (preposition.word("on") && cursor.follows(Kind.THREAD)) {
            return;
        } else if (preposition.word("on") && ofFeature()) {
            say(Said.OTHER);
        } else if (preposition.word("on")
                && cursor.passes("centre line", "centreline", "centerline", "centre", "center")) {
            say(Said.CENTRED);
        } else {
            sideBehind(preposition);
        }
    }

    private void onSize() {
        Measured size = draft.numbers.next(cursor);
        if (cursor.passes("bc", "pcd", "bolt circle", "circle", "pitch circle", "pc")) {
            draft.circle = size;
            say(Said.CIRCLE);
        } else if (draft.mouth != null) {
            hole.accept(size);
        } else {
            draft.on = size;
            say(Said.ON);
        }
    }

    private boolean ofFeature() {
        String id = id();
        boolean known = draft.context.features().stream()
                .anyMatch(feature -> feature.id().equals(id));
        if (known) {
            cursor.take();
            cursor.take();
            draft.other = id;
        }
        return known;
    }

    private String id() {
        return text(0) + text(1);
    }

    private void sideBehind(Piece preposition) {
        int before = draft.corner.size();
        while (Corners.isWord(cursor.look())) {
            draft.corner.add(cursor.take());
            cursor.passes("and", "the");
        }
        int found = draft.corner.size() - before;
        if (found == 0) {
            throw Halt.refused(
                    Saying.at(preposition)
                            + " wants a side behind it (top, bottom, front, back, left, right), two for a corner, or on 80 BC.",
                    preposition);
        }
        Side side = found == 1 ? Corners.side(draft.corner.get(before)) : null;
        if (side != null) {
            draft.corner.remove(before);
            draft.side = side;
        }
        cursor.passes("corner", "edges", "edge", "side", "face", "end");
    }

    private boolean sideWord() {
        if (Corners.isWord(cursor.look())) {
            draft.sides.add(cursor.take());
            return true;
        }
        return false;
    }

    private void say(Said what) {
        draft.said.put(what, cursor.last());
    }
}

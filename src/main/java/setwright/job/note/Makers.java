package setwright.job.note;

import java.util.List;
import setwright.job.Feature;
import setwright.job.note.Draft.Said;
import setwright.job.note.Measured.Role;

/** Decides what a draft makes. */
final class Makers {
    private static final int MOST_GUESSED_HOLES = 24;

    private Makers() {}

    static List<Feature> features(Draft draft) {
        Head head = draft.head;
        if (head == null) {
            return List.of(unnamed(draft));
        }
        if (head != Head.FACE && !head.isHole() && draft.mouth != null) {
            throw Halt.refused(
                    "A " + draft.mouth.called() + " belongs to a hole, not to a " + head.called()
                            + "; write a note for each.",
                    0,
                    draft.note.length());
        }
        if (draft.thread != null && !head.isHole()) {
            throw Halt.refused(
                    Saying.at(draft.thread) + " is a thread in a note of a " + head.called()
                            + "; write a note for each.",
                    draft.thread);
        }
        requireSingle(draft, head);
        Leftovers.refuse(draft, head);
        return head == Head.SQUARE ? new Shapes(draft).square() : List.of(named(draft, head));
    }

    private static void requireSingle(Draft draft, Head head) {
        boolean counts = head.isHole() || head.isRoundAxis();
        if (!counts && draft.count > 1) {
            throw Halt.refused(
                    draft.count + " of a " + head.called()
                            + " are not read from one note; write a note for each place.",
                    0,
                    draft.note.length());
        }
    }

    private static Feature named(Draft draft, Head head) {
        return switch (head) {
            case HOLE, TAP, REAM, BORE, COUNTERBORE, COUNTERSINK, SPOTFACE -> Holes.of(draft);
            case SLOT -> new Cuts(draft).slot();
            case SLIT -> new Cuts(draft).slit();
            case POCKET -> new Cuts(draft).pocket();
            case STEP -> new Cuts(draft).step();
            case KEYSEAT -> new Cuts(draft).keyseat();
            case T_SLOT -> new Shapes(draft).tSlot();
            case CHAMFER -> new Shapes(draft).chamfer();
            case FACE, SQUARE -> new Shapes(draft).face();
            case DOVETAIL -> new Shapes(draft).dovetail();
            case FLATS -> new RoundAxis(draft).flats();
            case GRADUATIONS -> new RoundAxis(draft).graduations();
            case SPLINES -> new RoundAxis(draft).splines();
            case TEETH -> new RoundAxis(draft).teeth();
        };
    }

    private static Feature unnamed(Draft draft) {
        boolean hole = draft.thread != null || draft.mouth != null;
        if (draft.says(Said.TO) && !hole) {
            Leftovers.refuse(draft, Head.FACE);
            return new Shapes(draft).face();
        }
        if (draft.onlyPlaces() || isPair(draft)) {
            pair(draft);
        }
        if (!hole && draft.chains.isEmpty()) {
            throw Halt.refused(
                    "Nothing says what is to be made; a note begins with it, as 4x M6 thru, slot 12 x 8 deep or 10 H7 thru.",
                    0,
                    draft.note.length());
        }
        Leftovers.refuse(draft, Head.HOLE);
        return Holes.of(draft);
    }

    private static boolean isPair(Draft draft) {
        return draft.thread == null
                && draft.mouth == null
                && draft.count == 0
                && draft.chains.size() == 1
                && draft.chains.get(0).size() == 2
                && draft.chains.get(0).stream().allMatch(size -> size.role() == Role.UNSAID)
                && whole(draft.chains.get(0).get(0));
    }

    private static boolean whole(Measured size) {
        return size.number().text().matches("\\d{1,2}")
                && Integer.parseInt(size.number().text()) <= MOST_GUESSED_HOLES
                && Integer.parseInt(size.number().text()) > 0;
    }

    /** Two numbers joined by x and nothing that says what they are: so many holes, or a diameter and a depth. */
    private static void pair(Draft draft) {
        if (!isPair(draft)) {
            throw Halt.refused(
                    "\"" + draft.typed
                            + "\" says where something is and not what; it belongs behind or below a note of holes,"
                            + " as 4x M6 thru.",
                    0,
                    draft.note.length());
        }
        Measured first = draft.chains.get(0).get(0);
        Measured second = draft.chains.get(0).get(1);
        String before = draft.note.substring(0, first.number().from());
        String behind = draft.note.substring(second.to());
        String count = first.number().text();
        String size = draft.note.substring(second.number().from(), second.to());
        NoteRead.Offer holes = new NoteRead.Offer(count + " holes " + size, before + count + "x " + size + behind);
        NoteRead.Offer depth = new NoteRead.Offer(
                "1 hole " + count + ", " + size + " deep", before + count + " x " + size + " deep" + behind);
        throw Halt.several(draft.says(Said.THROUGH) ? List.of(holes) : List.of(holes, depth));
    }
}

package setwright.job.note;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.job.Feature;
import setwright.job.GotBy;
import setwright.job.Hole;
import setwright.job.Pattern;
import setwright.job.Size;
import setwright.job.note.Draft.Said;
import setwright.job.note.Measured.Role;

/** Makes a hole, or a pattern of equal ones, of a draft. */
final class Holes {
    private static final double LARGEST_REAMED = 25;
    private static final String FORM = "diameter x depth, as 6.6 x 20 deep";

    private final Draft draft;

    private Holes(Draft draft) {
        this.draft = draft;
    }

    static Feature of(Draft draft) {
        return new Holes(draft).hole();
    }

    private Feature hole() {
        refuseForeign();
        requireMouthSizes();
        Side side = Patterns.side(draft);
        Bore bore = bore();
        Asks asks = new Asks(draft);
        boolean through = draft.says(Said.THROUGH);
        if (through && bore.depth() != null) {
            throw Halt.refused(
                    "A hole is through or " + bore.depth().nominal().text() + " deep, not both; leave one out.",
                    draft.piece(Said.THROUGH));
        }
        Within.depth(bore.depth(), side, draft);
        asks.unless(through || bore.depth() != null, "how deep is it", "thru");
        Mouths mouth = new Mouths(draft, bore.size());
        Patterns patterns = new Patterns(draft, side, rectangle());
        Pattern place = patterns.pattern();
        boolean many = patterns.count() > 1;
        asks.unless(
                place != null,
                many ? "where are the " + patterns.count() + " holes" : "where is it",
                patterns.likely(bore.size().nominal().inside()));
        Hole.Mouth opened = mouth.mouth();
        asks.stop();
        String fit = bore.fit();
        return new Hole(
                draft.context.id("hole"),
                draft.typed,
                side,
                make(bore),
                bore.size(),
                bore.thread(),
                fit,
                bore.depth(),
                Objects.requireNonNull(place),
                null,
                opened,
                GotBy.TOOL);
    }

    private void requireMouthSizes() {
        if (draft.mouth != null && draft.mouthChains.isEmpty()) {
            throw Asks.at(draft, draft.mouthAt, " ", "Which diameter has the " + draft.mouth.called() + "?", "");
        }
    }

    private record Bore(
            Size size,
            @Nullable String thread,
            @Nullable String fit,
            @Nullable Size depth) {}

    private Bore bore() {
        if (draft.thread != null) {
            Threaded threaded = new Threaded(draft, draft.thread);
            return new Bore(threaded.size(), threaded.designation(), null, threaded.depth());
        }
        if (draft.chains.isEmpty()) {
            throw draft.mouth == null
                    ? Asks.at(draft, draft.note.length(), " ", "Which diameter has it?", "")
                    : Asks.at(
                            draft,
                            draft.note.length(),
                            " on ",
                            "Which hole is the " + draft.mouth.called() + " on?",
                            new Mouths(draft, null).likelyHole());
        }
        Roles roles = Roles.of(draft.chains.get(0), List.of(Role.DIAMETER, Role.DEPTH), FORM);
        Measured diameter = roles.measured(Role.DIAMETER);
        if (diameter == null) {
            throw Halt.refused(
                    "The hole has a depth and no diameter; accepted is " + FORM + ".", 0, draft.note.length());
        }
        requireHoleClass(diameter);
        return new Bore(diameter.length(), null, diameter.fit(), roles.size(Role.DEPTH));
    }

    private static void requireHoleClass(Measured diameter) {
        String fit = diameter.fit();
        if (fit != null && Character.isLowerCase(fit.charAt(0))) {
            throw Halt.refused(
                    "\"" + fit + "\" is a tolerance class of shafts; a hole has a capital, as "
                            + diameter.number().text() + " H7.",
                    diameter.number().to(),
                    diameter.to());
        }
    }

    private Hole.Make make(Bore bore) {
        if (bore.thread() != null) {
            return Hole.Make.TAPPED;
        }
        boolean bored = draft.head == Head.BORE;
        boolean reamed = draft.head == Head.REAM || bore.fit() != null;
        boolean large = draft.head != Head.REAM && bore.size().nominal().inside() > LARGEST_REAMED;
        return bored || (reamed && large) ? Hole.Make.BORED : reamed ? Hole.Make.REAMED : Hole.Make.PLAIN;
    }

    private List<Measured> rectangle() {
        List<List<Measured>> behind = draft.chains.size() > 1 ? draft.chains : draft.mouthChains;
        if (behind.size() > 2) {
            Piece piece = behind.get(2).get(0).number();
            throw Halt.refused(Saying.at(piece) + " is one size too many; accepted is " + FORM + ".", piece);
        }
        return behind.size() == 2 ? behind.get(1) : List.of();
    }

    private void refuseForeign() {
        if (draft.head == Head.TAP && draft.thread == null) {
            String size = draft.chains.isEmpty()
                    ? ""
                    : draft.chains.get(0).get(0).number().text();
            throw Halt.refused(
                    "A tapped hole wants its thread, as M6 or 1/4-20" + (size.isEmpty() ? "" : ", not " + size) + ".",
                    0,
                    draft.note.length());
        }
    }
}

package setwright.job.note;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.geometry.Point3;
import setwright.geometry.Side;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;

/** What a draft lacks, asked together as one blank that holds what is likely. */
final class Asks {
    private final Draft draft;
    private final List<String> questions = new ArrayList<>();
    private final List<String> likely = new ArrayList<>();

    Asks(Draft draft) {
        this.draft = draft;
    }

    /** Asks where that is not known; the answer may be any clause. */
    void unless(boolean known, String question, String answer) {
        if (!known) {
            questions.add(question);
            if (!answer.isEmpty()) {
                likely.add(answer);
            }
        }
    }

    /** Asks where the middle is. */
    void place() {
        unless(draft.isPlaced(), "where is its middle", "centred" + onSide());
    }

    /** The side in the blank, as long as nobody named one. */
    String onSide() {
        return draft.side == null && draft.sides.isEmpty() ? " on top" : "";
    }

    /** @throws Halt where anything was asked */
    void stop() {
        if (!questions.isEmpty()) {
            String all = String.join(", and ", questions) + "?";
            throw Halt.missing(new Question(
                    all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1),
                    String.join(", ", likely),
                    draft.note,
                    draft.note.length(),
                    ", "));
        }
    }

    /** Asks for something that belongs behind a piece in the middle of the note. */
    static Halt at(Draft draft, int place, String joint, String asks, String likely) {
        return Halt.missing(new Question(asks, likely, draft.note, place, joint));
    }

    /** A likely length as people of these units write it, without its unit. */
    static String number(Draft draft, double mm) {
        return new Printing(draft.context.units()).number(Measure.LENGTH, mm);
    }

    /** A likely length that is a share of the blank's size, rounded to one that people would write. */
    static String round(Draft draft, double mm) {
        double step = draft.context.units() == UnitSystem.INCH ? 25.4 / 8 : mm < 10 ? 0.5 : 1;
        return number(draft, Math.max(step, Math.round(mm / step) * step));
    }

    /** Length along u, along v, and thickness behind a side; a made-up one where the blank is not known. */
    static Point3 seen(Draft draft, Side side) {
        Point3 size = draft.context.size();
        return side.size(size == null ? new Point3(100, 60, 25) : size);
    }
}

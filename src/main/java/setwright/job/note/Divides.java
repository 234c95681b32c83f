package setwright.job.note;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.job.note.Draft.Said;
import setwright.job.note.Piece.Kind;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** Reads what only things round an axis have: a module, a diametral pitch, longer lines among others. */
record Divides(Draft draft, Cursor cursor) {
    boolean clause() {
        return module() || pitch() || every();
    }

    private boolean module() {
        if (draft.head != Head.TEETH || !cursor.passes("module", "mod", "m")) {
            return false;
        }
        Piece number = number("module 2");
        tooth(number, number.text().matches("[0-9.]+") ? number.text() + " mm" : number.text());
        return true;
    }

    /** {@code 16 DP}: the module is an inch over the pitch. */
    private boolean pitch() {
        Piece number = cursor.look();
        Piece word = cursor.look(1);
        boolean named = word != null && (word.word("dp") || word.word("d.p"));
        if (draft.head != Head.TEETH || number == null || !Counts.whole(number) || !named) {
            return false;
        }
        cursor.take();
        cursor.take();
        tooth(number, "1/" + number.text() + " in");
        return true;
    }

    private void tooth(Piece number, String module) {
        if (draft.module != null) {
            throw Halt.refused(Saying.at(number) + " is a second module; one a note is accepted.", number);
        }
        Typed<Length> read =
                Numbers.guarded(number, () -> draft.numbers.reading().length(module));
        if (!(read.inside() > 0)) {
            throw Halt.refused(Saying.at(number) + " is no module; accepted is a number above nought.", number);
        }
        draft.module = read;
        draft.said.put(Said.MODULE, number);
    }

    /** {@code 8 long every 10}: the size before it is that of every tenth line. */
    private boolean every() {
        if (draft.head != Head.GRADUATIONS || !cursor.passes("every")) {
            return false;
        }
        Piece number = number("8 long every 10");
        cursor.passes("th", "st", "nd", "rd");
        if (!Counts.whole(number)) {
            throw Halt.refused(Saying.at(number) + " is no count of lines; a whole number is accepted.", number);
        }
        Measured size = last();
        if (size == null) {
            throw Halt.refused(Saying.at(number) + " wants a length before it, as 8 long every 10.", number);
        }
        draft.chains.forEach(chain -> chain.remove(size));
        draft.chains.removeIf(List::isEmpty);
        draft.lines.add(new Draft.Line(Integer.parseInt(number.text()), size.length(), number));
        draft.said.put(Said.LINES, number);
        return true;
    }

    private @Nullable Measured last() {
        return draft.chains.stream()
                .flatMap(List::stream)
                .max(Comparator.comparingInt(Measured::to))
                .orElse(null);
    }

    private Piece number(String example) {
        Piece word = cursor.last();
        if (!cursor.follows(Kind.NUMBER)) {
            throw Halt.refused(Saying.at(word) + " wants a number behind it, as " + example + ".", word);
        }
        return cursor.take();
    }
}

package setwright.job.note;

import java.util.List;
import java.util.Locale;
import setwright.job.note.Piece.Kind;
import setwright.quantity.UnitSystem;

/** Bare fractions in a metric job: of an inch or of a millimetre, which is not for us to guess. */
final class Fractions {
    private Fractions() {}

    /** Offers both readings where nothing in the note decides. */
    static void offer(String note, List<Piece> pieces, UnitSystem units) {
        List<Piece> bare = pieces.stream().filter(Fractions::isBareFraction).toList();
        if (units == UnitSystem.METRIC && !bare.isEmpty() && !sayInch(pieces)) {
            String inches = written(note, bare, " in");
            String millimetres = written(note, bare, " mm");
            throw Halt.several(List.of(
                    new NoteRead.Offer("fractions of an inch: " + inches, inches),
                    new NoteRead.Offer("fractions of a millimetre: " + millimetres, millimetres)));
        }
    }

    /** The same of a blank, whose sizes are all in inches where one is. */
    static void offerInches(String note, List<Piece> pieces, UnitSystem units) {
        List<Piece> bare = pieces.stream().filter(Fractions::isBareFraction).toList();
        if (units == UnitSystem.METRIC && !bare.isEmpty() && !sayInch(pieces)) {
            int last = bare.get(bare.size() - 1).to();
            for (int i = 2; i < pieces.size(); i++) {
                boolean joined = pieces.get(i - 1).sign("x") && pieces.get(i).is(Kind.NUMBER);
                last = joined ? Math.max(last, pieces.get(i).to()) : last;
            }
            String inches = note.substring(0, last) + " in" + note.substring(last);
            String millimetres = note.substring(0, last) + " mm" + note.substring(last);
            throw Halt.several(List.of(
                    new NoteRead.Offer("inches: " + inches, inches),
                    new NoteRead.Offer("millimetres: " + millimetres, millimetres)));
        }
    }

    /** Whether an inch thread, a number drill or a size in inches shows that fractions are of an inch. */
    static boolean sayInch(List<Piece> pieces) {
        return pieces.stream()
                .anyMatch(piece -> (piece.is(Kind.THREAD)
                                && !piece.text().toUpperCase(Locale.ROOT).startsWith("M"))
                        || piece.is(Kind.DRILL)
                        || (piece.is(Kind.NUMBER)
                                && piece.text().toLowerCase(Locale.ROOT).matches("(?s).*(in\\.?|inch|inches|\"|'')")));
    }

    private static boolean isBareFraction(Piece piece) {
        boolean fraction = piece.is(Kind.NUMBER) && Numbers.isFraction(piece);
        char last = piece.text().charAt(piece.text().length() - 1);
        return fraction && (Character.isDigit(last) || Numbers.isVulgar(last));
    }

    private static String written(String note, List<Piece> bare, String unit) {
        StringBuilder written = new StringBuilder(note);
        for (int i = bare.size() - 1; i >= 0; i--) {
            written.insert(bare.get(i).to(), unit);
        }
        return written.toString();
    }
}

package setwright.job.note;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.job.note.Piece.Kind;

/** A unit behind the last of several sizes joined by x is meant for all of them: {@code 1 x 2 x 3 in}. */
final class Units {
    private static final Pattern UNIT = Pattern.compile(
            ".*[0-9./⅛¼⅜½⅝¾⅞]\\s*(mm|in\\.?|inch|inches|\"|'')", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    private Units() {}

    static List<Piece> shared(List<Piece> pieces) {
        List<Piece> shared = new ArrayList<>(pieces);
        for (int i = shared.size() - 1; i >= 2; i--) {
            Matcher unit = UNIT.matcher(shared.get(i).text());
            boolean joined = shared.get(i).is(Kind.NUMBER)
                    && shared.get(i - 1).sign("x")
                    && shared.get(i - 2).is(Kind.NUMBER);
            if (joined && unit.matches() && !counts(shared, i - 2)) {
                shared.set(i - 2, inUnit(shared.get(i - 2), unit.group(1)));
            }
        }
        return shared;
    }

    /** Whether a number is a count: {@code 4x 12 mm}, {@code flats 2 x 30 mm}. */
    private static boolean counts(List<Piece> pieces, int at) {
        Piece times = pieces.get(at + 1);
        boolean flats = at > 0
                && (pieces.get(at - 1).word("flats") || pieces.get(at - 1).word("flat"));
        return flats
                || (at == 0
                        && times.touches(pieces.get(at))
                        && !pieces.get(at + 2).touches(times));
    }

    private static Piece inUnit(Piece number, String unit) {
        char last = number.text().charAt(number.text().length() - 1);
        boolean bare = Character.isDigit(last) || last == '.' || Numbers.isVulgar(last);
        return bare ? new Piece(number.kind(), number.text() + " " + unit, number.from(), number.to()) : number;
    }
}

package setwright.quantity;

import java.util.List;
import java.util.Optional;

/** A unit that stands somewhere in a text, and how many letters it takes there. */
record Spelled(Unit unit, int length) {

    /** The unit of the list with the longest spelling at this place of the text. */
    static Optional<Spelled> at(String text, int place, List<Unit> among) {
        Spelled longest = null;
        for (Unit unit : among) {
            for (String spelling : unit.spellings()) {
                int length = length(text, place, spelling);
                if (length > 0 && (longest == null || length > longest.length())) {
                    longest = new Spelled(unit, length);
                }
            }
        }
        return Optional.ofNullable(longest);
    }

    /** Zero where the spelling does not stand there; a point that abbreviates ({@code in.}) belongs to it. */
    private static int length(String text, int place, String spelling) {
        int end = place + spelling.length();
        if (spelling.isEmpty() || !text.regionMatches(true, place, spelling, 0, spelling.length())) {
            return 0;
        }
        if (!Character.isLetter(spelling.charAt(spelling.length() - 1))) {
            return spelling.length();
        }
        if (end < text.length() && goesOn(text.charAt(end))) {
            return 0;
        }
        boolean abbreviated = end < text.length() && text.charAt(end) == '.' && !Numeral.startsAt(text, end);
        return spelling.length() + (abbreviated ? 1 : 0);
    }

    private static boolean goesOn(char letter) {
        return Character.isLetter(letter) || "²³^".indexOf(letter) >= 0;
    }
}

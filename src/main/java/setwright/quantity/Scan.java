package setwright.quantity;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Goes through a text: blanks, signs, numbers, units. */
final class Scan {
    private static final List<Unit> ALL = List.of(Unit.values());
    private static final String SIGNS = "+-*/()";
    private static final String ENDS_A_WORD = " +-*()0123456789";

    private final String text;
    private final List<Unit> accepted;
    private final Complaints complaints;
    private int at;
    private int unitEnd = -1;

    Scan(String text, List<Unit> accepted, Complaints complaints) {
        this.text = plain(text);
        this.accepted = accepted;
        this.complaints = complaints;
    }

    int place() {
        return at;
    }

    /** Where the last thing read ended, blanks behind it left out. */
    int end() {
        int end = at;
        while (text.charAt(end - 1) == ' ') {
            end--;
        }
        return end;
    }

    /** Whether the last thing read was a unit. */
    boolean endsInUnit() {
        return unitEnd == end();
    }

    boolean atEnd() {
        passBlanks();
        return at == text.length();
    }

    /** Whether this sign stands here; it is passed if it does. */
    boolean passes(char sign) {
        passBlanks();
        boolean here = at < text.length() && text.charAt(at) == sign;
        if (here) {
            at++;
        }
        return here;
    }

    boolean numberFollows() {
        passBlanks();
        return Numeral.startsAt(text, at);
    }

    /** The number that stands here, {@code behindStroke} without a fraction joined to it. */
    Rational number(boolean behindStroke) {
        passBlanks();
        Optional<Numeral> numeral;
        try {
            numeral = Numeral.at(text, at, behindStroke);
        } catch (Unreadable unclear) {
            throw complaints.that("cannot be read: " + unclear.getMessage());
        }
        if (numeral.isEmpty()) {
            throw complaints.noNumber(word());
        }
        at = numeral.get().end();
        return numeral.get().value();
    }

    /** The unit that stands here; null where none does. */
    @Nullable
    Unit unit() {
        passBlanks();
        if (at == text.length()) {
            return null;
        }
        Optional<Spelled> ours = Spelled.at(text, at, accepted);
        Optional<Spelled> any = Spelled.at(text, at, ALL);
        int length = ours.map(Spelled::length).orElse(0);
        if (any.isPresent() && any.get().length() > length) {
            throw complaints.noUnit(text.substring(at, at + any.get().length()));
        }
        if (ours.isEmpty() && SIGNS.indexOf(text.charAt(at)) < 0 && !numberFollows()) {
            throw complaints.noUnit(word());
        }
        at += length;
        unitEnd = ours.isEmpty() ? unitEnd : at;
        return ours.map(Spelled::unit).orElse(null);
    }

    /** What is the matter with the rest of the text. */
    Unreadable leftOver() {
        return text.charAt(at) == ')' ? complaints.notOpened(at + 1) : complaints.noSign(text.substring(at));
    }

    private void passBlanks() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    /** The word here, up to a blank, a digit, a sign or a bracket; empty at the end. */
    private String word() {
        int end = Math.min(at + 1, text.length());
        while (end < text.length() && ENDS_A_WORD.indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return text.substring(at, end);
    }

    /** Blanks and dashes of every kind as the plain ones, letter by letter. */
    private static String plain(String typed) {
        StringBuilder plain = new StringBuilder(typed);
        for (int i = 0; i < plain.length(); i++) {
            char letter = plain.charAt(i);
            if (Character.isWhitespace(letter) || Character.isSpaceChar(letter)) {
                plain.setCharAt(i, ' ');
            } else if (letter == '−' || letter == '–') {
                plain.setCharAt(i, '-');
            } else if (letter == '⋅') {
                plain.setCharAt(i, '·');
            }
        }
        return plain.toString();
    }
}

package setwright.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number without sign that stands somewhere in a text: {@code 38}, {@code .500}, {@code 1.2e-5}, or a mixed number
 * {@code 1-1/2} (no blanks), {@code 1 1/2} or {@code 1½}.
 */
record Numeral(Rational value, int end) {
    private static final Pattern DECIMAL = Pattern.compile("(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE]([+-]?[0-9]+))?");
    private static final Pattern MIXED =
            Pattern.compile("([0-9]*[1-9][0-9]*)(?:-| +)([0-9]+)/([0-9]*[1-9][0-9]*)(?![.0-9]|[eE][-+0-9])");
    private static final String EIGHTHS = "⅛¼⅜½⅝¾⅞";
    private static final Pattern ONE_LETTER = Pattern.compile("([0-9]*) *([" + EIGHTHS + "])");
    private static final int LARGEST_POWER_OF_TEN = 400;

    static boolean startsAt(String text, int place) {
        return region(DECIMAL, text, place).lookingAt()
                || region(ONE_LETTER, text, place).lookingAt();
    }

    /**
     * The number at this place.
     *
     * @param wholeOnly behind a stroke, where {@code 3/4-1/8} is no mixed number
     * @throws Unreadable with a half-sentence where one stands there that has no clear value
     */
    static Optional<Numeral> at(String text, int place, boolean wholeOnly) {
        Matcher oneLetter = region(ONE_LETTER, text, place);
        if (oneLetter.lookingAt()) {
            return Optional.of(oneLetter(oneLetter));
        }
        Matcher mixed = region(MIXED, text, place);
        if (!wholeOnly && mixed.lookingAt()) {
            return Optional.of(mixed(mixed));
        }
        Matcher decimal = region(DECIMAL, text, place);
        return decimal.lookingAt() ? Optional.of(decimal(decimal)) : Optional.empty();
    }

    private static Numeral mixed(Matcher found) {
        Rational part = Rational.decimal(found.group(2)).over(Rational.decimal(found.group(3)));
        if (part.compareTo(Rational.ONE) >= 0) {
            throw new Unreadable(found.group() + " is no mixed number, for " + found.group(2) + "/" + found.group(3)
                    + " is not less than one; write blanks round a minus, or a + between");
        }
        return new Numeral(Rational.decimal(found.group(1)).plus(part), found.end());
    }

    private static Numeral oneLetter(Matcher found) {
        Rational part = Rational.of(EIGHTHS.indexOf(found.group(2)) + 1, 8);
        Rational whole = found.group(1).isEmpty() ? Rational.ZERO : Rational.decimal(found.group(1));
        return new Numeral(whole.plus(part), found.end());
    }

    private static Numeral decimal(Matcher found) {
        String power = found.group(1);
        if (power != null && (power.length() > 5 || Math.abs(Integer.parseInt(power)) > LARGEST_POWER_OF_TEN)) {
            throw new Unreadable(
                    found.group() + " is beyond the numbers that can be computed with, about 1e-300 to 1e300");
        }
        return new Numeral(Rational.decimal(found.group()), found.end());
    }

    private static Matcher region(Pattern pattern, String text, int place) {
        return pattern.matcher(text).region(place, text.length()).useTransparentBounds(true);
    }
}

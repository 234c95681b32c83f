package setwright.job.note;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import setwright.job.Size;
import setwright.job.note.Measured.Role;
import setwright.job.note.Piece.Kind;
import setwright.quantity.Length;
import setwright.quantity.Measure;
import setwright.quantity.Rational;
import setwright.quantity.Reading;
import setwright.quantity.Typed;
import setwright.quantity.UnitSystem;
import setwright.quantity.Unreadable;
import setwright.quantity.fit.Fits;
import setwright.quantity.fit.Limits;

/**
 * Reads the numbers of a note with what they may be over and under.
 *
 * @param inchFractions whether a bare fraction is one of an inch
 */
record Numbers(Reading reading, boolean inchFractions) {
    private static final int FINEST = 9;
    private static final double LONGEST = 10_000;

    /** Whether a number stands here, a diameter sign before it or not. */
    static boolean follow(Cursor cursor) {
        return cursor.follows(Kind.NUMBER)
                || cursor.follows(Kind.DRILL)
                || (cursor.follows(1, Kind.NUMBER) && before(cursor.look()) != Role.UNSAID);
    }

    /** The size that stands here, with its tolerance and the word that says what it is. */
    Measured next(Cursor cursor) {
        Role before = before(cursor.look());
        if (before != Role.UNSAID) {
            cursor.take();
        }
        Piece number = cursor.take();
        if (isAngle(number)) {
            return new Measured(
                    number, null, guarded(number, () -> reading.angle(number.text())), null, before, number.to());
        }
        Typed<Length> nominal = length(number);
        requirePositive(nominal, number);
        if (cursor.follows(Kind.FIT)) {
            Piece fit = cursor.take();
            return new Measured(number, fitted(nominal, number, fit), null, fit.text(), before, fit.to());
        }
        Size size = toleranced(nominal, number, cursor);
        Measured found =
                new Measured(number, size, null, null, before, cursor.last().to());
        return named(found, cursor);
    }

    /** What a sign or word before a number says that it is. */
    private static Role before(@Nullable Piece piece) {
        if (piece == null) {
            return Role.UNSAID;
        }
        return switch (piece.text()) {
            case "⌀", "dia", "diameter" -> Role.DIAMETER;
            case "↧", "depth" -> Role.DEPTH;
            case "width" -> Role.WIDTH;
            case "length" -> Role.LENGTH;
            default -> Role.UNSAID;
        };
    }

    /** A length of any sign, for a place. */
    Typed<Length> place(Cursor cursor) {
        boolean negative = cursor.passesSign("-");
        cursor.passesSign("+");
        if (!cursor.follows(Kind.NUMBER)) {
            Piece here = cursor.look() == null ? cursor.last() : cursor.take();
            throw Halt.refused(
                    "A place wants two distances, as at 30, 12; at " + Saying.at(here) + " one is missing.", here);
        }
        Piece number = cursor.take();
        Typed<Length> length = length(number);
        return negative && length.inside() != 0 ? guarded(number, () -> reading.length("-" + length.text())) : length;
    }

    static boolean isAngle(Piece number) {
        return number.text().matches("(?is).*(°|deg|degrees?)\\.?");
    }

    private static Measured named(Measured found, Cursor cursor) {
        Role role = found.role();
        if (cursor.follows(1, Kind.NUMBER) && before(cursor.look()) != Role.UNSAID) {
            return found;
        }
        if (cursor.passes("deep", "dp", "depth")) {
            role = Role.DEPTH;
        } else if (cursor.passes("long", "lg", "length")) {
            role = Role.LENGTH;
        } else if (cursor.passes("wide", "width", "w")) {
            role = Role.WIDTH;
        } else if (cursor.passes("dia", "diameter", "diam") || cursor.passesSign("⌀")) {
            role = Role.DIAMETER;
        }
        return found.as(role, cursor.last().to());
    }

    Typed<Length> length(Piece number) {
        if (isAngle(number)) {
            throw Halt.refused(Saying.at(number) + " is an angle where a length is wanted.", number);
        }
        return guarded(number, () -> reading.length(text(number)));
    }

    private String text(Piece number) {
        boolean bare = Character.isDigit(number.text().charAt(number.text().length() - 1))
                || isVulgar(number.text().charAt(number.text().length() - 1));
        boolean inch = bare && inchFractions && isFraction(number) && reading.bare() == UnitSystem.METRIC;
        return number.text() + (inch ? " in" : "");
    }

    static boolean isFraction(Piece number) {
        return number.text().indexOf('/') >= 0 || number.text().chars().anyMatch(letter -> isVulgar((char) letter));
    }

    static boolean isVulgar(char letter) {
        return "⅛¼⅜½⅝¾⅞".indexOf(letter) >= 0;
    }

    private static void requirePositive(Typed<Length> length, Piece number) {
        if (length.inside() <= 0) {
            throw Halt.refused(Saying.at(number) + " is nought; a size is more than that.", number);
        }
        if (length.inside() > LONGEST) {
            throw Halt.refused(Saying.at(number) + " is longer than 10 m; a size up to that is accepted.", number);
        }
    }

    private Size fitted(Typed<Length> nominal, Piece number, Piece fit) {
        Limits limits = guarded(fit, () -> Fits.listed().limits(nominal.inside(), fit.text()));
        return new Size(
                nominal,
                millimetres(BigDecimal.valueOf(nominal.inside()), limits.lower(), number),
                millimetres(BigDecimal.valueOf(nominal.inside()), limits.upper(), number));
    }

    private Typed<Length> millimetres(BigDecimal nominal, double over, Piece number) {
        BigDecimal limit = nominal.add(BigDecimal.valueOf(over)).setScale(6, RoundingMode.HALF_EVEN);
        return guarded(number, () -> reading.length(plain(limit) + " mm"));
    }

    private Size toleranced(Typed<Length> nominal, Piece number, Cursor cursor) {
        if (cursor.passesSign("±") || cursor.passesSign("+/-") || cursor.passesSign("+-")) {
            Rational both = over(cursor, nominal, "20 ±0.1");
            return limited(nominal, both.negate(), both, number);
        }
        boolean here = (cursor.followsSign(0, "+") || cursor.followsSign(0, "-")) && cursor.follows(1, Kind.NUMBER);
        if (!here) {
            return Size.of(nominal);
        }
        Rational one = signed(cursor, nominal);
        cursor.passesSign("/");
        if (!cursor.followsSign(0, "+") && !cursor.followsSign(0, "-")) {
            throw Halt.refused(
                    "The tolerance at place " + (number.to() + 1)
                            + " has one limit; both are wanted, as +0.1 -0 or ±0.1.",
                    number.to(),
                    cursor.last().to());
        }
        Rational other = signed(cursor, nominal);
        boolean rises = one.compareTo(other) <= 0;
        return limited(nominal, rises ? one : other, rises ? other : one, number);
    }

    private Rational signed(Cursor cursor, Typed<Length> nominal) {
        boolean negative = cursor.take().sign("-");
        Rational over = over(cursor, nominal, "20 +0.1 -0");
        return negative ? over.negate() : over;
    }

    /** A limit's distance from the nominal size, in millimetres; a bare number is in the unit of the nominal size. */
    private Rational over(Cursor cursor, Typed<Length> nominal, String example) {
        if (!cursor.follows(Kind.NUMBER)) {
            Piece sign = cursor.last();
            throw Halt.refused(Saying.at(sign) + " wants a number behind it, as " + example + ".", sign);
        }
        Piece number = cursor.take();
        Reading likeNominal = new Reading(inches(nominal) ? UnitSystem.INCH : UnitSystem.METRIC);
        return guarded(number, () -> likeNominal.exact(Measure.LENGTH, number.text()));
    }

    private Size limited(Typed<Length> nominal, Rational lower, Rational upper, Piece number) {
        Rational exact = guarded(number, () -> reading.exact(Measure.LENGTH, nominal.text()));
        if (exact.plus(lower).signum() <= 0) {
            throw Halt.refused(
                    "The tolerance of " + Saying.at(number) + " takes all of it; a smaller one is accepted.", number);
        }
        return new Size(
                nominal, decimal(exact.plus(lower), nominal, number), decimal(exact.plus(upper), nominal, number));
    }

    private Typed<Length> decimal(Rational mm, Typed<Length> like, Piece number) {
        boolean inches = inches(like);
        Rational value = inches ? mm.over(reading.exact(Measure.LENGTH, "1 in")) : mm;
        BigDecimal written = new BigDecimal(value.numerator())
                .divide(new BigDecimal(value.denominator()), FINEST, RoundingMode.HALF_EVEN);
        return guarded(number, () -> reading.length(plain(written) + (inches ? " in" : " mm")));
    }

    private static boolean inches(Typed<Length> typed) {
        return !typed.text().toLowerCase(Locale.ROOT).contains("mm");
    }

    private static String plain(BigDecimal number) {
        return number.stripTrailingZeros().toPlainString();
    }

    static <T> T guarded(Piece piece, Supplier<T> read) {
        try {
            return read.get();
        } catch (Unreadable unreadable) {
            throw Halt.refused(Saying.at(piece) + ": " + unreadable.getMessage(), piece);
        }
    }
}

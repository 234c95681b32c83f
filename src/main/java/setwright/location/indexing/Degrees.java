package setwright.location.indexing;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Locale;
import setwright.quantity.Rational;

/** Angles as exact numbers of degrees. */
public final class Degrees {
    private static final double RELATIVE = 1e-13;

    private Degrees() {}

    /**
     * The simplest number of degrees that a double of radians can mean: 8°50' is 53/6 again, a seventh of a turn 360/7.
     * Found by its continued fraction, to one part in ten million million.
     */
    public static Rational exact(double radians) {
        double degrees = StrictMath.toDegrees(radians);
        Rational rest = Rational.decimal(new BigDecimal(degrees).toPlainString());
        double off = Math.abs(degrees) * RELATIVE;
        BigInteger[] before = {BigInteger.ZERO, BigInteger.ONE};
        BigInteger[] now = {BigInteger.ONE, BigInteger.ZERO};
        while (true) {
            BigInteger whole = rest.floor();
            BigInteger[] next = {
                whole.multiply(now[0]).add(before[0]), whole.multiply(now[1]).add(before[1])
            };
            before = now;
            now = next;
            Rational found = new Rational(now[0], now[1]);
            rest = rest.minus(new Rational(whole, BigInteger.ONE));
            if (Math.abs(found.nearest() - degrees) <= off || rest.signum() == 0) {
                return found;
            }
            rest = Rational.ONE.over(rest);
        }
    }

    /** Degrees, minutes and seconds, as a dial is read: {@code 51° 25' 43"}; parts of a second where they are. */
    public static String said(Rational degrees) {
        if (degrees.signum() < 0) {
            return "-" + said(degrees.negate());
        }
        Rational hundredths = degrees.times(360_000).plus(Rational.of(1, 2));
        BigInteger all = hundredths.floor();
        BigInteger[] seconds = all.divideAndRemainder(BigInteger.valueOf(100));
        BigInteger[] minutes = seconds[0].divideAndRemainder(BigInteger.valueOf(60));
        BigInteger[] whole = minutes[0].divideAndRemainder(BigInteger.valueOf(60));
        String part = seconds[1].signum() == 0
                ? minutes[1].toString()
                : String.format(Locale.ROOT, "%d.%02d", minutes[1].intValue(), seconds[1].intValue());
        return whole[0] + "° " + whole[1] + "'" + (part.equals("0") ? "" : " " + part + "\"");
    }
}

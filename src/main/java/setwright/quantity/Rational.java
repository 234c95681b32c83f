package setwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * An exact number, a fraction in lowest terms. Readings and dials are worked in these: 1.4 in by 0.2 in is 7 turns, not
 * 6.9999.
 */
public record Rational(BigInteger numerator, BigInteger denominator) implements Comparable<Rational> {
    public static final Rational ZERO = of(0);
    public static final Rational ONE = of(1);

    private static final MathContext BEYOND_DOUBLE = new MathContext(60);

    public Rational {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("A fraction of " + numerator + " has to have a denominator other than zero.");
        }
        BigInteger common = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            common = common.negate();
        }
        numerator = numerator.divide(common);
        denominator = denominator.divide(common);
    }

    public static Rational of(long whole) {
        return new Rational(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    public static Rational of(long numerator, long denominator) {
        return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /** The number that a decimal such as {@code 25.4} or {@code 1.2e-5} says. */
    public static Rational decimal(String text) {
        return of(new BigDecimal(text));
    }

    /** The decimal that a person sees for this double: 0.1 is a tenth here. */
    public static Rational asWritten(double number) {
        return of(BigDecimal.valueOf(number));
    }

    private static Rational of(BigDecimal decimal) {
        return decimal.scale() >= 0
                ? new Rational(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
                : new Rational(decimal.toBigIntegerExact(), BigInteger.ONE);
    }

    public Rational plus(Rational other) {
        return new Rational(
                numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
                denominator.multiply(other.denominator));
    }

    public Rational minus(Rational other) {
        return plus(other.negate());
    }

    public Rational times(Rational other) {
        return new Rational(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    public Rational times(long factor) {
        return times(of(factor));
    }

    /** @throws ArithmeticException where the other is zero */
    public Rational over(Rational other) {
        return new Rational(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    public Rational negate() {
        return new Rational(numerator.negate(), denominator);
    }

    public int signum() {
        return numerator.signum();
    }

    public boolean isWhole() {
        return denominator.equals(BigInteger.ONE);
    }

    /** The greatest whole number that is not greater than this one. */
    public BigInteger floor() {
        BigInteger[] parts = numerator.divideAndRemainder(denominator);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** The double nearest to this number; infinite where it is beyond all of them. */
    public double nearest() {
        return new BigDecimal(numerator)
                .divide(new BigDecimal(denominator), BEYOND_DOUBLE)
                .doubleValue();
    }

    @Override
    public int compareTo(Rational other) {
        return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
    }
}

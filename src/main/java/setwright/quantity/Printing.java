package setwright.quantity;

import java.math.BigInteger;

/**
 * Prints quantities as metric or inch people write them, with the digits that are worth reading: thousandths of an inch,
 * hundredths of a millimetre, whole revolutions, three figures of a force, two of a power or factor.
 */
public record Printing(UnitSystem units) {
    private static final int FINEST_FRACTION = 64;
    private static final double SAME_MM = 1e-9;

    /** A value with its unit, for instance {@code 12.7 mm} or {@code 0.500 in}. */
    public String of(Measure measure, double inside) {
        return of(measure.unit(units), inside);
    }

    /** A value with this unit, whichever the person reads. */
    public String of(Unit unit, double inside) {
        return number(unit, inside) + unit.afterNumber();
    }

    /** A number of a working in the unit in which these people read it: a result in millimetres for inch people in inches. */
    public String of(Value value) {
        Unit unit =
                Measure.readIn(value.unit()).map(measure -> measure.unit(units)).orElse(value.unit());
        return of(unit, value.inside());
    }

    /** A value with exactly so many digits behind the point. */
    public String of(Measure measure, double inside, int decimals) {
        Unit unit = measure.unit(units);
        return Digits.fixed(unit.fromInside(inside), decimals) + unit.afterNumber();
    }

    /** The number alone, in the unit of the measure. */
    public String number(Measure measure, double inside) {
        return number(measure.unit(units), inside);
    }

    /** The number alone, in this unit. */
    public String number(Unit unit, double inside) {
        return Digits.of(unit).print(unit.fromInside(inside));
    }

    /**
     * A value that is not known sharply: {@code 2 to 5}, {@code 10 to 20 kN}, two figures at most. Where both ends print
     * alike it is one number.
     */
    public String band(Measure measure, double low, double high) {
        Unit unit = measure.unit(units);
        String from = Digits.significant(2).print(unit.fromInside(low));
        String to = Digits.significant(2).print(unit.fromInside(high));
        return (from.equals(to) ? from : from + " to " + to) + unit.afterNumber();
    }

    public String band(Measure measure, Band band) {
        return band(measure, band.low(), band.high());
    }

    /** How many times: {@code 2.3}. */
    public String factor(double factor) {
        return number(Measure.RATIO, factor);
    }

    /**
     * A length for inch people as a fraction where it is one by 64ths ({@code 1-1/2 in}, {@code 3/16 in}, {@code 2 in}),
     * else as {@link #of(Measure, double)}.
     */
    public String fractionOrDecimal(double mm) {
        long parts = Math.round(Unit.IN.fromInside(mm) * FINEST_FRACTION);
        boolean isFraction = Math.abs(Unit.IN.toInside((double) parts / FINEST_FRACTION) - mm) < SAME_MM;
        return units == UnitSystem.INCH && isFraction
                ? fraction(Rational.of(parts, FINEST_FRACTION)) + " in"
                : of(Measure.LENGTH, mm);
    }

    /** Degrees, minutes and seconds to the nearest second: {@code 34°15'20"}, {@code 34°15'}, {@code 34°}. */
    public String degreesMinutesSeconds(double rad) {
        long all = Math.round(Unit.ARC_SECOND.fromInside(Math.abs(rad)));
        long minutes = all / 60 % 60;
        long seconds = all % 60;
        String sign = rad < 0 && all > 0 ? "-" : "";
        String ofMinutes = minutes == 0 && seconds == 0 ? "" : minutes + "'";
        return sign + all / 3600 + "°" + ofMinutes + (seconds == 0 ? "" : seconds + "\"");
    }

    private static String fraction(Rational inches) {
        Rational size = inches.signum() < 0 ? inches.negate() : inches;
        String sign = inches.signum() < 0 ? "-" : "";
        BigInteger whole = size.floor();
        Rational part = size.minus(new Rational(whole, BigInteger.ONE));
        String written = part.numerator() + "/" + part.denominator();
        if (part.signum() == 0) {
            return sign + whole;
        }
        return sign + (whole.signum() == 0 ? written : whole + "-" + written);
    }
}

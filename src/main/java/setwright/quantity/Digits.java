package setwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How many digits of a number are worth printing. Either so many significant ones, or so many behind the point; trailing
 * zeros go.
 *
 * @param kept how many behind the point stay even where they are zero: {@code 0.500 in}
 */
record Digits(Kind kind, int count, int kept) {
    /** Digits in which a conversion can have left noise; what lies beyond them is not looked at. */
    private static final MathContext WITHOUT_NOISE = new MathContext(12, RoundingMode.HALF_EVEN);

    private static final int MOST_DECIMALS = 9;

    enum Kind {
        /** Behind the point; a number of few units of the last place keeps two significant ones. */
        PLACES,
        /** As {@link #PLACES}, and one more where the number is exact with that: 0.005 mm, 0.0625 in. */
        PLACES_OR_EXACT,
        SIGNIFICANT,
        /** As {@link #SIGNIFICANT}, but no digit before the point is lost. */
        SIGNIFICANT_OR_WHOLE,
        /** As {@link #SIGNIFICANT}, but a whole number stays as it is: 127 teeth. */
        SIGNIFICANT_OR_COUNT
    }

    static Digits whole() {
        return places(0);
    }

    static Digits places(int count) {
        return new Digits(Kind.PLACES, count, 0);
    }

    static Digits placesOrExact(int count) {
        return new Digits(Kind.PLACES_OR_EXACT, count, 0);
    }

    static Digits significant(int count) {
        return new Digits(Kind.SIGNIFICANT, count, 0);
    }

    static Digits significantOrWhole(int count) {
        return new Digits(Kind.SIGNIFICANT_OR_WHOLE, count, 0);
    }

    Digits keeping(int decimals) {
        return new Digits(kind, count, decimals);
    }

    String print(double number) {
        BigDecimal clean = BigDecimal.valueOf(number).round(WITHOUT_NOISE);
        return trimmed(clean.setScale(Math.min(decimals(clean), MOST_DECIMALS), RoundingMode.HALF_UP));
    }

    /** Exactly so many digits behind the point. */
    static String fixed(double number, int decimals) {
        BigDecimal clean = BigDecimal.valueOf(number).round(WITHOUT_NOISE);
        return clean.setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    /** Digits behind the point, negative where even digits before it are rounded away. */
    private int decimals(BigDecimal number) {
        int beforePoint = number.precision() - number.scale();
        return switch (kind) {
            case PLACES -> number.signum() == 0 ? count : Math.max(count, 2 - beforePoint);
            case PLACES_OR_EXACT ->
                number.signum() == 0 ? count : Math.max(isExact(number) ? count + 1 : count, 2 - beforePoint);
            case SIGNIFICANT -> count - beforePoint;
            case SIGNIFICANT_OR_WHOLE -> Math.max(0, count - beforePoint);
            case SIGNIFICANT_OR_COUNT -> number.stripTrailingZeros().scale() <= 0 ? 0 : count - beforePoint;
        };
    }

    private boolean isExact(BigDecimal number) {
        return number.setScale(count + 1, RoundingMode.HALF_EVEN)
                        .subtract(number)
                        .abs()
                        .compareTo(BigDecimal.valueOf(1, MOST_DECIMALS))
                < 0;
    }

    private String trimmed(BigDecimal rounded) {
        BigDecimal shortest = rounded.stripTrailingZeros();
        return shortest.setScale(Math.max(kept, shortest.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }

    /** What a reader of this unit expects. */
    static Digits of(Unit unit) {
        return switch (unit) {
            case MM, CM, M -> placesOrExact(2);
            case IN -> placesOrExact(3).keeping(3);
            case FT -> places(3);
            case MM_PER_REV, MM_PER_TOOTH -> places(3);
            case IN_PER_REV, IN_PER_TOOTH -> places(4).keeping(3);
            case UM, THOU, ARC_MINUTE, IN_PER_MIN -> places(1);
            case MINUTE, HOUR -> significantOrWhole(3);
            case DEG -> places(2);
            case ARC_SECOND, SECOND, RPM, MM_PER_MIN, M_PER_MIN, FT_PER_MIN -> whole();
            case W, KW, HP, PERCENT -> significant(2);
            case NONE -> new Digits(Kind.SIGNIFICANT_OR_COUNT, 2, 0);
            case KG_PER_M3, G_PER_CM3, LB_PER_IN3 -> significant(4);
            case RAD, N, KN, LBF, N_M, N_MM, LBF_FT, LBF_IN -> significant(3);
            case N_PER_MM2, GPA, PSI, KW_S_PER_CM3, HP_MIN_PER_IN3, RAD_PER_S, M_PER_S, MM_PER_S -> significant(3);
            case KG, G, LB, N_PER_MM, N_PER_UM, LBF_PER_IN, MM3_PER_S, CM3_PER_MIN, IN3_PER_MIN -> significant(3);
            case MM2, IN2, HZ, KELVIN, CELSIUS_STEP, FAHRENHEIT_STEP, PER_KELVIN -> significant(3);
        };
    }
}

package setwright.quantity;

/** The definitions from which the factors of all units follow. All but {@link #PI} are exact. */
final class Definitions {
    /** Millimetres in an inch, by the international agreement of 1959. */
    static final Rational INCH = Rational.decimal("25.4");

    /** Millimetres in a foot. */
    static final Rational FOOT = INCH.times(12);

    /** Kilograms in a pound, by the international agreement of 1959. */
    static final Rational POUND = Rational.decimal("0.45359237");

    /** Standard acceleration of gravity in m/s². */
    static final Rational GRAVITY = Rational.decimal("9.80665");

    /** Newtons in a pound-force. */
    static final Rational POUND_FORCE = POUND.times(GRAVITY);

    /** Watts in the mechanical horsepower of 550 lbf·ft/s. */
    static final Rational HORSEPOWER = POUND_FORCE.times(FOOT).times(550).over(Rational.of(1000));

    /** Half the way round, in radians: to fifty digits, so that a double of it is rounded once. */
    static final Rational PI = Rational.decimal("3.1415926535897932384626433832795028841971693993751");

    static final Rational CUBIC_INCH = INCH.times(INCH).times(INCH);

    private Definitions() {}
}

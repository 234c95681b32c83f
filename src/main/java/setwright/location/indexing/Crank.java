package setwright.location.indexing;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Rational;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * Whatever is turned from mark to mark: a crank over a hole circle, the handle of a rotary table over its dial, a direct
 * plate or collet block whose marks are its holes or sides.
 *
 * @param ratio turns of it for one of the work
 * @param marks on one turn of it
 */
public record Crank(int ratio, int marks) {
    public static final Procedure ABSOLUTE = new Procedure(
            "position from the start",
            List.of(
                    "position j stands at j / N of a turn, an exact fraction",
                    "only where it is read it is rounded, to the nearest mark",
                    "a rounded step is never added up: it would close N times its error out"),
            Unit.NONE,
            Source.of("computed: position = j / N of a turn, rounded once"));

    /**
     * A place to wind to.
     *
     * @param number from nought; the one behind the last is the first again
     * @param place exact, as a share of a turn of the work
     * @param turns whole turns since the start
     * @param marks beyond them
     * @param error what the nearest mark is off, as a share of a turn of the work
     */
    public record Position(int number, Rational place, long turns, int marks, Rational error) {}

    public Crank {
        if (ratio < 1 || marks < 1) {
            throw new IllegalArgumentException("A crank has a ratio and marks, not " + ratio + " and " + marks + ".");
        }
    }

    /**
     * The handle of a rotary table.
     *
     * @param division degrees of one mark of its dial, or of its vernier
     */
    public static Crank rotary(int ratio, Rational division) {
        Rational marks = Rational.of(360, ratio).over(division);
        if (!marks.isWhole()) {
            throw new IllegalArgumentException(
                    "A turn of the handle is " + Rational.of(360, ratio).nearest()
                            + "°, which is no whole number of divisions of " + division.nearest() + "°.");
        }
        return new Crank(ratio, marks.numerator().intValueExact());
    }

    /** Where the work stands at a place given as a share of its turn. */
    public Position at(int number, Rational place) {
        BigInteger nearest =
                place.times((long) ratio * marks).plus(Rational.of(1, 2)).floor();
        BigInteger[] parts = nearest.divideAndRemainder(BigInteger.valueOf(marks));
        Rational reached = new Rational(nearest, BigInteger.valueOf((long) ratio * marks));
        return new Position(number, place, parts[0].longValueExact(), parts[1].intValueExact(), reached.minus(place));
    }

    /** Every position of a full turn, and the first again behind the last. */
    public List<Position> positions(int divisions) {
        Divisions.require(divisions);
        List<Position> all = new ArrayList<>();
        for (int j = 0; j <= divisions; j++) {
            all.add(at(j, Rational.of(j, divisions)));
        }
        return List.copyOf(all);
    }

    /** Whether every position falls on a mark. */
    public boolean divides(int divisions) {
        Divisions.require(divisions);
        return (long) ratio * marks % divisions == 0;
    }

    /** How far the positions lie out at most, as a share of a turn of the work. */
    public Rational worst(int divisions) {
        Rational worst = Rational.ZERO;
        for (Position position : positions(divisions)) {
            Rational off = position.error().signum() < 0 ? position.error().negate() : position.error();
            worst = off.compareTo(worst) > 0 ? off : worst;
        }
        return worst;
    }
}

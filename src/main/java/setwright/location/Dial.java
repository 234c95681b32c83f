package setwright.location;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * A feed screw's dial. Everything is worked in exact decimals, so that 1.4 in by 0.2 in is 7 turns and not 6.9999; every
 * length is in one unit, whichever.
 *
 * @param perTurn how far one turn moves the table
 * @param division how far one division does
 */
public record Dial(BigDecimal perTurn, BigDecimal division) {
    /** Decimal places kept of a length in millimetres: enough for any inch decimal of seven places. */
    private static final int PLACES = 9;

    public static final Procedure MOVE = new Procedure(
            "turns and divisions",
            List.of(
                    "add the distance to the dial's reading",
                    "whole turns go into it, counted downwards for a move back",
                    "what remains is the dial's reading, in divisions"),
            Unit.NONE,
            Source.of("computed: exact decimals, turns = floor(move / per turn)"));
    public static final Procedure APPROACH = new Procedure(
            "backlash taken up",
            List.of(
                    "to end upwards coming from above: go below the place by backlash and a little more, then up to it",
                    "to end downwards coming from below: the same the other way round"),
            Unit.NONE,
            Source.of("common practice"));

    /** The side from which a place is always approached. */
    public enum Approach {
        UP,
        DOWN
    }

    /**
     * Where a move ends on the dial.
     *
     * @param turns how often nought passes; negative for a move back
     * @param reading of the dial at the end, in the unit of the lengths
     * @param divisions the same in divisions; may carry a fraction, to 34 figures where that does not end
     * @param leftOver the reading less the nearest whole division (of two, the lower)
     */
    public record Move(int turns, BigDecimal reading, BigDecimal divisions, BigDecimal leftOver) {}

    public Dial {
        if (perTurn.signum() <= 0 || division.signum() <= 0 || division.compareTo(perTurn) > 0) {
            throw new IllegalArgumentException("A dial has a lead per turn and smaller divisions, not "
                    + perTurn.toPlainString() + " and " + division.toPlainString() + ".");
        }
    }

    /** A length in millimetres as the decimal that was meant: rounded to a millionth of a micrometre. */
    public static BigDecimal exact(double mm) {
        return new BigDecimal(mm).setScale(PLACES, RoundingMode.HALF_EVEN).stripTrailingZeros();
    }

    /** A move from dial reading nought. */
    public Move move(BigDecimal distance) {
        return move(distance, BigDecimal.ZERO);
    }

    /** A move from where the table stands: a reading of the dial, or a coordinate that the dial reads nought at nought of. */
    public Move move(BigDecimal distance, BigDecimal from) {
        BigDecimal end = reading(from).add(distance);
        BigDecimal reading = reading(end);
        BigDecimal turns = end.subtract(reading).divideToIntegralValue(perTurn);
        BigDecimal divisions = reading.divide(division, MathContext.DECIMAL128);
        BigDecimal whole = divisions.setScale(0, RoundingMode.HALF_DOWN);
        return new Move(
                turns.intValueExact(),
                reading.stripTrailingZeros(),
                divisions.stripTrailingZeros(),
                reading.subtract(whole.multiply(division)).stripTrailingZeros());
    }

    /** What the dial shows at a coordinate: at least nought, below one turn. */
    private BigDecimal reading(BigDecimal coordinate) {
        BigDecimal rest = coordinate.remainder(perTurn);
        return rest.signum() < 0 ? rest.add(perTurn) : rest;
    }

    /**
     * The coordinates to wind to, one after the other, so that the place is reached from the asked side with the backlash
     * taken up: the place alone where the way there has that direction already.
     *
     * @param beyond the backlash and a little more
     */
    public static List<BigDecimal> stops(BigDecimal from, BigDecimal to, Approach approach, BigDecimal beyond) {
        return switch (approach) {
            case UP -> to.compareTo(from) >= 0 ? List.of(to) : List.of(to.subtract(beyond), to);
            case DOWN -> to.compareTo(from) <= 0 ? List.of(to) : List.of(to.add(beyond), to);
        };
    }
}

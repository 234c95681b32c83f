package setwright.location.indexing;

import setwright.quantity.Rational;

/**
 * Crank and plate both turning.
 *
 * @param move of the crank against the plate
 * @param plateTurns turns of the plate for one of the spindle; with the crank where above nought
 * @param train from the spindle to the plate
 */
public record DifferentialWay(CrankMove move, Rational plateTurns, GearTrain train) {
    public boolean withCrank() {
        return plateTurns.signum() > 0;
    }

    /**
     * Idlers between: with the crank one for two gears and none for four, against it one more. It depends on the bevels
     * of the head: turn the crank a little and watch the plate.
     */
    public int idlers() {
        return (train.simple() ? 1 : 0) + (withCrank() ? 0 : 1);
    }

    Rational plateLoad() {
        return withCrank() ? plateTurns : plateTurns.negate();
    }
}

package setwright.location.indexing;

import setwright.quantity.Rational;

/**
 * A turn of the crank: whole turns, then spaces on a hole circle.
 *
 * @param holes spaces moved on; the hole that the pin leaves counts nought
 * @param plate the plate with this circle
 */
public record CrankMove(long turns, int holes, int circle, String plate) {
    public Rational inTurns() {
        return Rational.of(turns * circle + holes, circle);
    }

    /**
     * Holes between the sector arms, the one with the pin among them: one more than the spaces (Practical Treatise on
     * Milling, 1914, p. 50).
     */
    public int betweenArms() {
        return holes + 1;
    }
}

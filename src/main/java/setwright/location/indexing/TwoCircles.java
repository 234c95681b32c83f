package setwright.location.indexing;

import setwright.quantity.Rational;

/**
 * A compound move: the crank on one circle, then plate and crank together on another circle of the same face.
 *
 * @param same whether the second part goes the same way as the first
 * @param plate the face that both circles are on
 */
public record TwoCircles(
        long firstHoles, int firstCircle, long secondHoles, int secondCircle, boolean same, String plate) {
    public Rational inTurns() {
        Rational first = Rational.of(firstHoles, firstCircle);
        Rational second = Rational.of(secondHoles, secondCircle);
        return same ? first.plus(second) : first.minus(second);
    }

    /** Spaces that are counted at every move. */
    long spaces() {
        return firstHoles + secondHoles;
    }
}

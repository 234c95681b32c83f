package setwright.location.indexing;

import setwright.quantity.Rational;

/**
 * One way to come from division to division.
 *
 * @param method plain, differential...
 * @param move what is done at every division
 * @param error most that a division lies out, degrees; nought where the way is exact
 * @param why what makes it less or more trouble than its neighbours
 */
public record IndexWay(Method method, String move, Rational error, String why) {
    /** Ways in the order of the trouble they make. */
    public enum Method {
        DIRECT("direct"),
        PLAIN("plain"),
        DIFFERENTIAL("differential"),
        COMPOUND("compound"),
        COMPOUND_IN_STEPS("compound in steps"),
        NEAREST_HOLE("nearest hole");

        private final String word;

        Method(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public boolean exact() {
        return error.signum() == 0;
    }
}

package setwright.quantity;

/**
 * A letter in a written formula.
 *
 * @param letter as written in the formula, for instance {@code fz} or {@code kc1.1}
 * @param name in the trade's words
 * @param unit the unit in which the formula is written for it
 * @param least smallest value, in that unit, for which the rule is meant
 * @param greatest largest value, in that unit, for which the rule is meant
 */
public record Symbol(String letter, String name, Unit unit, double least, double greatest) {
    public static Symbol symbol(String letter, String name, Unit unit, double least, double greatest) {
        return new Symbol(letter, name, unit, least, greatest);
    }
}

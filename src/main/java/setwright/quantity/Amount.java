package setwright.quantity;

import org.jspecify.annotations.Nullable;

/**
 * A number met while an expression is read, with its unit once it has one.
 *
 * @param unit null while the number is bare
 */
record Amount(Rational number, @Nullable Unit unit, Form form) {
    enum Form {
        /** A number or bracket with its unit, if any, right behind it; {@code 1/2 in} halves the inch of such a one. */
        WRITTEN,
        /** Several terms. */
        SUM,
        /** A bracket without a unit behind it, a product. */
        CLOSED
    }

    static Amount written(Rational number, @Nullable Unit unit) {
        return new Amount(number, unit, Form.WRITTEN);
    }

    Rational inside(Unit bare) {
        return number.times((unit == null ? bare : unit).factor());
    }

    Amount negate() {
        return new Amount(number.negate(), unit, form);
    }
}

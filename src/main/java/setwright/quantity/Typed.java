package setwright.quantity;

/**
 * A value together with the text that a person typed for it, so that {@code 1/2 in} never comes back as 12.7 mm.
 * Two are equal when text and value are.
 */
public record Typed<Q extends Quantity>(String text, Q value) {
    public Typed {
        if (text.isBlank()) {
            throw new IllegalArgumentException("A typed value needs its text; the value is " + value + ".");
        }
    }

    /** The number in the unit that the program computes in. */
    public double inside() {
        return value.inside();
    }
}

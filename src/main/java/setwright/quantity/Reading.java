package setwright.quantity;

/**
 * Reads quantities as people write them ({@code 1/2 in}, {@code 1-1/2"}, {@code 38 mm}, {@code #7}, {@code 34°15'},
 * {@code 48 ft-lb}, {@code 20 + 3.5}); a bare number takes the unit of {@link #bare()}.
 */
public record Reading(UnitSystem bare) {
    /**
     * The value of a text in the unit that the program computes in.
     *
     * @throws Unreadable where the text is not a quantity of that measure
     */
    public double inside(Measure measure, String text) {
        throw new Unreadable("not written yet: " + measure + " " + text);
    }

    public Typed<Length> length(String text) {
        return new Typed<>(text.strip(), new Length(inside(Measure.LENGTH, text)));
    }
}

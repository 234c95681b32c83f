package setwright.quantity;

/** Prints quantities as metric or inch people write them. */
public record Printing(UnitSystem units) {
    /** A value with its unit, for instance {@code 12.7 mm} or {@code 0.500 in}. */
    public String of(Measure measure, double inside) {
        return number(measure, inside) + " " + measure.unit(units).symbol();
    }

    /** The number alone, in the unit of the measure. */
    public String number(Measure measure, double inside) {
        throw new UnsupportedOperationException("not written yet: " + measure + " " + inside);
    }
}

package setwright.quantity;

/** A frequency in hertz. */
public record Frequency(double hertz) implements Quantity {
    public Frequency {
        Quantity.requireFinite("frequency", hertz);
    }

    @Override
    public Dimension dimension() {
        return Dimension.FREQUENCY;
    }

    @Override
    public double inside() {
        return hertz;
    }
}

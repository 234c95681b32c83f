package setwright.quantity;

/** A plain number: a factor, a friction value, a share. */
public record Ratio(double value) implements Quantity {
    public Ratio {
        Quantity.requireFinite("number", value);
    }

    @Override
    public Dimension dimension() {
        return Dimension.RATIO;
    }

    @Override
    public double inside() {
        return value;
    }
}

package setwright.quantity;

/** A power in watts. */
public record Power(double w) implements Quantity {
    public Power {
        Quantity.requireFinite("power", w);
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }

    @Override
    public double inside() {
        return w;
    }
}

package setwright.quantity;

/** A time in seconds. */
public record Time(double s) implements Quantity {
    public Time {
        Quantity.requireFinite("time", s);
    }

    @Override
    public Dimension dimension() {
        return Dimension.TIME;
    }

    @Override
    public double inside() {
        return s;
    }
}

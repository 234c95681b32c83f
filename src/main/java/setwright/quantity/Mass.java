package setwright.quantity;

/** A mass in kilograms. */
public record Mass(double kg) implements Quantity {
    public Mass {
        Quantity.requireFinite("mass", kg);
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }

    @Override
    public double inside() {
        return kg;
    }
}

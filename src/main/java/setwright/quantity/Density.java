package setwright.quantity;

/** A density in kilograms per cubic millimetre. */
public record Density(double kgPerMm3) implements Quantity {
    public Density {
        Quantity.requireFinite("density", kgPerMm3);
    }

    @Override
    public Dimension dimension() {
        return Dimension.DENSITY;
    }

    @Override
    public double inside() {
        return kgPerMm3;
    }
}

package setwright.quantity;

/** A stress, or a specific cutting force, in newtons per square millimetre. */
public record Stress(double nPerMm2) implements Quantity {
    public Stress {
        Quantity.requireFinite("stress", nPerMm2);
    }

    @Override
    public Dimension dimension() {
        return Dimension.STRESS;
    }

    @Override
    public double inside() {
        return nPerMm2;
    }
}

package setwright.quantity;

/** A stiffness in newtons per millimetre. */
public record Stiffness(double nPerMm) implements Quantity {
    public Stiffness {
        Quantity.requireFinite("stiffness", nPerMm);
    }

    @Override
    public Dimension dimension() {
        return Dimension.STIFFNESS;
    }

    @Override
    public double inside() {
        return nPerMm;
    }
}

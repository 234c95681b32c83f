package setwright.quantity;

/** A length in millimetres; negative where a place or a step down is meant. */
public record Length(double mm) implements Quantity {
    public Length {
        Quantity.requireFinite("length", mm);
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }

    @Override
    public double inside() {
        return mm;
    }
}

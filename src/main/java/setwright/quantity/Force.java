package setwright.quantity;

/** A force in newtons. */
public record Force(double n) implements Quantity {
    public Force {
        Quantity.requireFinite("force", n);
    }

    @Override
    public Dimension dimension() {
        return Dimension.FORCE;
    }

    @Override
    public double inside() {
        return n;
    }
}

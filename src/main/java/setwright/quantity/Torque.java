package setwright.quantity;

/** A torque in newton millimetres. */
public record Torque(double nmm) implements Quantity {
    public Torque {
        Quantity.requireFinite("torque", nmm);
    }

    @Override
    public Dimension dimension() {
        return Dimension.TORQUE;
    }

    @Override
    public double inside() {
        return nmm;
    }
}

package setwright.quantity;

/** A feed or cutting speed in millimetres per second. */
public record Speed(double mmPerS) implements Quantity {
    public Speed {
        Quantity.requireFinite("speed", mmPerS);
    }

    @Override
    public Dimension dimension() {
        return Dimension.SPEED;
    }

    @Override
    public double inside() {
        return mmPerS;
    }
}

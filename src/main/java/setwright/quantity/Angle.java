package setwright.quantity;

/** An angle in radians. */
public record Angle(double rad) implements Quantity {
    public Angle {
        Quantity.requireFinite("angle", rad);
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGLE;
    }

    @Override
    public double inside() {
        return rad;
    }
}

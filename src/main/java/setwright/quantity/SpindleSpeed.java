package setwright.quantity;

/** A spindle speed in radians per second. */
public record SpindleSpeed(double radPerS) implements Quantity {
    public SpindleSpeed {
        Quantity.requireFinite("spindle speed", radPerS);
    }

    @Override
    public Dimension dimension() {
        return Dimension.TURNING;
    }

    @Override
    public double inside() {
        return radPerS;
    }
}

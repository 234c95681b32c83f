package setwright.quantity;

/** A value that is not known sharply: what is expected, and the ends between which it may lie (same unit as the value). */
public record Band(double low, double expected, double high) {
    public Band {
        Quantity.requireFinite("band", low);
        Quantity.requireFinite("band", expected);
        Quantity.requireFinite("band", high);
        if (low > expected || expected > high) {
            throw new IllegalArgumentException("A band runs from low to high with the expected value between, not "
                    + low + ", " + expected + ", " + high + ".");
        }
    }

    /** Every value of the band taken through a rising factor. */
    public Band times(double factor) {
        return new Band(low * factor, expected * factor, high * factor);
    }
}

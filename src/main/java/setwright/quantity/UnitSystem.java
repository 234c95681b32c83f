package setwright.quantity;

/** Which units a person reads and which unit a bare number takes. */
public enum UnitSystem {
    METRIC,
    INCH
}

package setwright.job;

/** What holds the part in a set-up. */
public sealed interface Holding permits UndecidedHolding, ViseHolding, TableHolding, DeviceHolding {
    Kind kind();

    /** The kinds of holding. */
    enum Kind {
        UNDECIDED,
        VISE,
        TABLE,
        DEVICE
    }
}

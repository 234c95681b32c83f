package setwright.job;

/** The drawn-up holding of a set-up. */
public sealed interface DrawnHolding permits DrawnVise, DrawnTable, DrawnDevice {
    Kind kind();

    /** What was decided; never undecided any more. */
    enum Kind {
        VISE,
        TABLE,
        DEVICE
    }
}

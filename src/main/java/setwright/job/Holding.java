package setwright.job;

/** What holds the part in a set-up. */
public sealed interface Holding permits ViseHolding {
    Kind kind();

    /** The kinds of holding. */
    enum Kind {
        VISE
    }
}

package setwright.plan.hold;

/** The joints of the chain from the part to the table, in that order. */
public enum Joint {
    /** The part in or on what holds it. */
    PART,
    /** A device between the jaws of a vise. */
    IN_VISE,
    /** The lock of what divides. */
    LOCK,
    /** A device on the table by its own bolts. */
    ON_TABLE
}

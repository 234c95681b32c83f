package setwright.cutting;

/** Which way the edge of a milling cutter meets the work. */
public enum Direction {
    /** The edge runs with the feed of the work: the chip starts thick, the cut pulls the table along. */
    CLIMB,
    /** The edge runs against the feed of the work: the chip starts thin, the cut pushes the table back. */
    CONVENTIONAL,
    /** The cutter is as wide as the cut: it cuts both ways at once. */
    SLOT
}

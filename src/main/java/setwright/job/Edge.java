package setwright.job;

/** An edge of a side, as one looks at it squarely. */
public enum Edge {
    LEFT,
    RIGHT,
    LOW,
    HIGH
}

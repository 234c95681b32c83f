package setwright.job;

/** How the zero of a set-up is found. */
public enum ZeroFinding {
    EDGES,
    BETWEEN_EDGES,
    JAW_AND_STOP,
    BORE_SWEPT,
    SCRIBED_LINES,
    DEVICE_CENTRE
}

package setwright.job;

/** How a size is got; decides what belongs in its error budget. */
public enum GotBy {
    TOOL,
    DIAL,
    READOUT,
    STOP,
    MEASURED
}

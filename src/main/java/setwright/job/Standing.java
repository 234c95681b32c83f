package setwright.job;

/** The standing of a planned value. The program may rub out pencil, never ink. */
public enum Standing {
    PENCILLED,
    INKED,
    MEASURED
}

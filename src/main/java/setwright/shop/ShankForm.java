package setwright.shop;

/** The form of a cutter's shank, which decides what may hold it. */
public enum ShankForm {
    PLAIN,
    FLATTED,
    SCREWED,
    MORSE,
    REDUCED
}

package setwright.shop;

/** The form of a cutter's shank, which decides what may hold it. */
public enum ShankForm {
    PLAIN,
    FLATTED,
    SCREWED,
    MORSE,
    REDUCED,
    /** No shank: a bore that sits on an arbor. */
    BORE
}

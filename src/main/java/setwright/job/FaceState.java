package setwright.job;

/** The state in which a face of the blank comes. */
public enum FaceState {
    SAWN,
    HOT_ROLLED,
    BRIGHT_DRAWN,
    GROUND,
    FLAME_CUT,
    CAST,
    EXTRUDED,
    MACHINED
}

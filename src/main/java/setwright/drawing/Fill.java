package setwright.drawing;

/** What a filled area is part of; named by the thing, never by a colour. */
public enum Fill {
    TABLE,
    VISE,
    JAW,
    PARALLEL,
    OTHER_FIXTURE,
    PART,
    /** What the operation takes from the part. */
    CUT_AWAY,
    /** An open hole as seen from above. */
    OPEN,
    CUTTER,
    SHANK,
    HOLDER,
    NOSE,
    QUILL
}

package setwright.drawing;

/** The lines over an area that is cut by the plane of a section; neighbours differ in slant or spacing. */
public enum Hatch {
    PART,
    JAW,
    VISE,
    PACKING,
    OTHER,
    /** Where two bodies meet: crossed lines, close together. */
    TOUCH
}

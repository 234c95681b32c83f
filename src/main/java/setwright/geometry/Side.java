package setwright.geometry;

/** The six sides of a blank as drawn: top +z, bottom, front -y, back, left -x, right. */
public enum Side {
    TOP,
    BOTTOM,
    FRONT,
    BACK,
    LEFT,
    RIGHT
}

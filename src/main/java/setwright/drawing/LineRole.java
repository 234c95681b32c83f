package setwright.drawing;

/** What a line stands for; the types of line of ISO 128 by use, so that whoever paints chooses widths and dashes. */
public enum LineRole {
    /** Visible outline: thick. */
    VISIBLE,
    /** Visible edge that is no outline, such as the far rim of a hole: thin. */
    EDGE,
    /** Hidden outline: dashed. */
    HIDDEN,
    /** Axis or line of symmetry: long dash, dot. */
    CENTRE,
    /** Neighbouring part, or end position of one that moves: long dash, two dots. */
    NEIGHBOUR,
    /** Dimension, leader, finished size on stock: thin. */
    THIN,
    /** Way of the tool point in the cut: thin, with an arrow at its end. */
    PATH,
    /** Way of the tool point over the work. */
    CROSSING,
    /** Freehand line where a length is broken off. */
    BROKEN
}

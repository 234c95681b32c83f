package setwright.reach;

/**
 * How a machine brings its nose over the table; millimetres.
 *
 * @param lowest height of the nose over the table with the knee up and the quill in
 * @param highest the same with the knee down
 * @param quillStroke how far the quill comes out
 */
public record NoseRange(double lowest, double highest, double quillStroke) {
    public NoseRange {
        if (!(lowest < highest && quillStroke >= 0)) {
            throw new IllegalArgumentException("A nose range runs from lowest to highest, not from " + lowest + " to "
                    + highest + ", with a quill stroke of nought or more, not " + quillStroke + ".");
        }
    }
}

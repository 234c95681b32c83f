package setwright.plan.part;

/**
 * Where the part sits in its set-up, mm; heights from the table top, X and Y from the middle of the table.
 *
 * @param bed what packing or part stand on
 * @param partBottom underside of the part
 * @param jawTop top of the jaws
 * @param startTop top of the largest blank
 * @param finishedTop top of the finished part; the start where nothing is faced
 * @param left X of the part's left face, nominal size
 * @param front Y of the part's front face, nominal size
 * @param right X of its right face
 * @param back Y of its back face
 */
public record Heights(
        double bed,
        double partBottom,
        double jawTop,
        double startTop,
        double finishedTop,
        double left,
        double front,
        double right,
        double back) {

    public double length() {
        return right - left;
    }

    public double depth() {
        return back - front;
    }

    /** How deep the jaws grip. */
    public double gripDepth() {
        return Math.min(jawTop, startTop) - partBottom;
    }
}

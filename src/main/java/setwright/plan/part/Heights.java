package setwright.plan.part;

/**
 * Where the part sits in its set-up, mm; heights from the table top, X and Y from the middle of the table.
 *
 * @param bed what packing or part stand on: vise bed, table, face of a device
 * @param partBottom underside of the part; below the table for a round part that sinks into a slot
 * @param jawTop top of the jaws; elsewhere of the highest clamp, and of the part where no clamp stands over it
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

    /** The same with a part that is only so high when it is put in. */
    public Heights startingAt(double height) {
        double top = partBottom + height;
        return new Heights(bed, partBottom, jawTop, top, Math.min(finishedTop, top), left, front, right, back);
    }

    /** The same with its top finished at another height. */
    Heights finishedAt(double height) {
        return new Heights(bed, partBottom, jawTop, startTop, height, left, front, right, back);
    }

    public double length() {
        return right - left;
    }

    public double depth() {
        return back - front;
    }

    /** How deep the jaws of a vise grip. */
    public double gripDepth() {
        return Math.min(jawTop, startTop) - partBottom;
    }

    /** The same with clamps that reach that high. */
    Heights clampedTo(double top) {
        return new Heights(bed, partBottom, Math.max(jawTop, top), startTop, finishedTop, left, front, right, back);
    }
}

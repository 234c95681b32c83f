package setwright.reach;

/**
 * The heights that one operation asks of knee and quill; millimetres over the table.
 *
 * @param projection from the nose down to the tool point
 * @param crossing the height to which the point is drawn back between features
 * @param deepest the lowest height of the point
 * @param quillOut how far out the quill may be clamped where the knee sets the depth; not asked where the quill feeds
 */
public record HeightsOfUse(
        String operation, double projection, double crossing, double deepest, Feed feed, double quillOut) {
    /** What brings the tool down to its depth. */
    public enum Feed {
        /** Drilling, reaming, boring, tapping: the quill, in one stroke; the knee stays. */
        QUILL,
        /** Milling: the knee comes up, the quill stays clamped. */
        KNEE
    }

    public HeightsOfUse {
        if (!(projection >= 0 && crossing >= deepest && quillOut >= 0)) {
            throw new IllegalArgumentException(operation + ": the crossing height " + crossing
                    + " lies at or above the deepest point " + deepest + "; projection " + projection
                    + " and quill out " + quillOut + " are nought or more.");
        }
    }

    public static HeightsOfUse byQuill(String operation, double projection, double crossing, double deepest) {
        return new HeightsOfUse(operation, projection, crossing, deepest, Feed.QUILL, 0);
    }

    /** Milling with the quill in. */
    public static HeightsOfUse byKnee(String operation, double projection, double crossing, double deepest) {
        return new HeightsOfUse(operation, projection, crossing, deepest, Feed.KNEE, 0);
    }
}

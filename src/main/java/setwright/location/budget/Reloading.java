package setwright.location.budget;

import setwright.quantity.Source;

/** What brings one part after the other to the same place, and how well: half-widths in millimetres. */
public enum Reloading {
    /** Each part is clocked, or found by its edges where it lies. */
    CLOCKED("clocked or found anew", Seating.CLOCKED, "an indicator on every part"),
    /** Pushed against jaw and stop, both wiped. */
    JAW_AND_STOP("against jaw and stop", Seating.STOPPED, "soft jaws cut to the part, or indicating each part"),
    /** Soft jaws that were cut to the part where they stand now; cut anew once they came off. */
    SOFT_JAWS("in soft jaws cut where they stand", 0.00635, "indicating each part"),
    /** Over two dowels in a slip fit: half of the play of 10 H7/g6 at its most. */
    DOWELS("over dowels", 0.0145, "a closer fit, or one dowel cut to a diamond"),
    /** Dropped into a pocket that leaves it room to go in. */
    POCKET("in a pocket", 0.025, "a stop in the pocket and a clamp that pushes to it");

    private static final Source COMMON =
            Source.of("common practice: stops repeat to 0.001 to 0.002 in, clean jaws to 0.0005 to 0.002 in");

    private final String words;
    private final double halfWidth;
    private final String halvedBy;

    Reloading(String words, double halfWidth, String halvedBy) {
        this.words = words;
        this.halfWidth = halfWidth;
        this.halvedBy = halvedBy;
    }

    /** For instance {@code against jaw and stop}. */
    public String words() {
        return words;
    }

    /** How far a part comes to lie from where the first one lay, along an axis, mm. */
    public double halfWidth() {
        return halfWidth;
    }

    /** What would bring it closer. */
    public String halvedBy() {
        return halvedBy;
    }

    public Source source() {
        return COMMON;
    }
}

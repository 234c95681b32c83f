package setwright.job;

import setwright.geometry.Side;

/** Something that the drawing asks for, on a named side. */
public sealed interface Feature permits Face, Hole {
    /** Short and unique in the job, made by the program. */
    String id();

    /** The drawing note that it was typed as; empty where it came by fields. */
    String note();

    Side side();

    Kind kind();

    /** The kinds of feature. */
    enum Kind {
        FACE,
        HOLE
    }
}

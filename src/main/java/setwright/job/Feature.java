package setwright.job;

import setwright.geometry.Side;

/** Something that the drawing asks for, on a named side. */
public sealed interface Feature
        permits Face,
                Step,
                Slot,
                ArcSlot,
                RadiusEnd,
                Pocket,
                ProfileCut,
                Hole,
                Keyseat,
                WoodruffSeat,
                TSlot,
                Dovetail,
                Flats,
                Chamfer,
                Slit,
                InclinedFace,
                Divided {
    /** Short and unique in the job, made by the program. */
    String id();

    /** The drawing note that it was typed as; empty where it came by fields. */
    String note();

    Side side();

    /** How its size is got; decides what belongs in its error budget. */
    GotBy got();

    /** The same with its size got another way. */
    default Feature got(GotBy way) {
        return Got.by(this, way);
    }

    Kind kind();

    /** The kinds of feature. */
    enum Kind {
        FACE,
        STEP,
        SLOT,
        ARC_SLOT,
        RADIUS_END,
        POCKET,
        PROFILE,
        HOLE,
        KEYSEAT,
        WOODRUFF_SEAT,
        T_SLOT,
        DOVETAIL,
        FLATS,
        CHAMFER,
        SLIT,
        INCLINED_FACE,
        DIVIDED
    }
}

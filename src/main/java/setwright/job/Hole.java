package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A hole, or a pattern of equal holes.
 *
 * @param make how it is made
 * @param size diameter; for a tapped hole the major diameter of its thread
 * @param thread designation, for instance {@code M8}; null unless tapped
 * @param fit tolerance class, for instance {@code H7}; null where none
 * @param depth of full diameter (full thread where tapped); null: through
 * @param place where its holes are on the side
 * @param position diameter of the position tolerance zone (ISO 1101); null where general
 * @param mouth what its mouth is opened to; null where nothing but a broken edge
 * @param got how its diameter is got
 */
public record Hole(
        String id,
        String note,
        Side side,
        Make make,
        Size size,
        @Nullable String thread,
        @Nullable String fit,
        @Nullable Size depth,
        Pattern place,
        @Nullable Typed<Length> position,
        @Nullable Mouth mouth,
        GotBy got)
        implements Feature {

    /** A hole whose mouth is left as it is drilled. */
    public Hole(
            String id,
            String note,
            Side side,
            Make make,
            Size size,
            @Nullable String thread,
            @Nullable String fit,
            @Nullable Size depth,
            Pattern place,
            @Nullable Typed<Length> position,
            GotBy got) {
        this(id, note, side, make, size, thread, fit, depth, place, position, null, got);
    }

    /** How a hole is made. */
    public enum Make {
        PLAIN,
        REAMED,
        BORED,
        TAPPED
    }

    /**
     * What the mouth of a hole is opened to.
     *
     * @param depth of a counterbore or spotface below the surface; null where the angle says it
     * @param angle included angle of a countersink; null where flat
     * @param from the side that it is cut from; null: the side of the hole
     */
    public record Mouth(
            Form form,
            Size diameter,
            @Nullable Size depth,
            @Nullable Typed<Angle> angle,
            @Nullable Side from) {
        /** The forms of mouth. */
        public enum Form {
            COUNTERBORE,
            COUNTERSINK,
            SPOTFACE
        }
    }

    public boolean through() {
        return depth == null;
    }

    @Override
    public Kind kind() {
        return Kind.HOLE;
    }
}

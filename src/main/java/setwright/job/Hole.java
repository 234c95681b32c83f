package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
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
        GotBy got)
        implements Feature {

    /** How a hole is made. */
    public enum Make {
        PLAIN,
        REAMED,
        TAPPED
    }

    public boolean through() {
        return depth == null;
    }

    @Override
    public Kind kind() {
        return Kind.HOLE;
    }
}

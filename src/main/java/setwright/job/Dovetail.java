package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A dovetail.
 *
 * @param male whether the tail stands; else the slot
 * @param width at its widest
 * @param depth below the side
 * @param angle of its flanks from the floor
 * @param place its middle
 * @param finish mean roughness; null where the drawing is silent
 */
public record Dovetail(
        String id,
        String note,
        Side side,
        boolean male,
        Size width,
        Size depth,
        Typed<Angle> angle,
        Placed place,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.DOVETAIL;
    }
}

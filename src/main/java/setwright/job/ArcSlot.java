package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A slot along an arc.
 *
 * @param width across it
 * @param depth below the side; null: through
 * @param radius of its middle line
 * @param centre of the arc
 * @param from angle of the middle of its first end, from u anticlockwise
 * @param to angle of the middle of its last end
 * @param finish mean roughness; null where the drawing is silent
 */
public record ArcSlot(
        String id,
        String note,
        Side side,
        Size width,
        @Nullable Size depth,
        Typed<Length> radius,
        Placed centre,
        Typed<Angle> from,
        Typed<Angle> to,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.ARC_SLOT;
    }
}

package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * An end rounded about an axis square to the side.
 *
 * @param edge at which end
 * @param radius of the end
 * @param depth below the side; null: through
 * @param finish mean roughness; null where the drawing is silent
 */
public record RadiusEnd(
        String id,
        String note,
        Side side,
        Edge edge,
        Size radius,
        @Nullable Size depth,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.RADIUS_END;
    }
}

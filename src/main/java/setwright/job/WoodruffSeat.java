package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A seat for a Woodruff key in a round part.
 *
 * @param shaft diameter there
 * @param key designation of the key, for instance {@code 404}
 * @param width of the key
 * @param cutter diameter of the seat
 * @param depth from the side of the seat
 * @param place its middle
 * @param finish mean roughness; null where the drawing is silent
 */
public record WoodruffSeat(
        String id,
        String note,
        Side side,
        Size shaft,
        String key,
        Size width,
        Size cutter,
        Size depth,
        Placed place,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.WOODRUFF_SEAT;
    }
}

package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A keyseat for a parallel key in a round part.
 *
 * @param shaft diameter there
 * @param width of the key
 * @param depth from the side of the seat, or from the crown
 * @param from where the depth is counted from
 * @param length of full depth; null: to the end of the shaft
 * @param place middle of its length
 * @param finish mean roughness; null where the drawing is silent
 */
public record Keyseat(
        String id,
        String note,
        Side side,
        Size shaft,
        Size width,
        Size depth,
        From from,
        @Nullable Size length,
        Placed place,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    /** Where the depth is counted from. */
    public enum From {
        SIDE,
        CROWN
    }

    @Override
    public Kind kind() {
        return Kind.KEYSEAT;
    }
}

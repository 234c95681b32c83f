package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A closed or through pocket with upright walls.
 *
 * @param length along u, before it is turned
 * @param width along v
 * @param depth below the side; null: through, a window
 * @param corner radius of its corners
 * @param place its middle
 * @param finish mean roughness; null where the drawing is silent
 */
public record Pocket(
        String id,
        String note,
        Side side,
        Size length,
        Size width,
        @Nullable Size depth,
        Typed<Length> corner,
        Placed place,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.POCKET;
    }
}

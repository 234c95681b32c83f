package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A shoulder along an edge of a side.
 *
 * @param edge along which it runs
 * @param width from the edge inward
 * @param depth below the side
 * @param length along the edge; null: the whole edge
 * @param finish mean roughness; null where the drawing is silent
 */
public record Step(
        String id,
        String note,
        Side side,
        Edge edge,
        Size width,
        Size depth,
        @Nullable Size length,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.STEP;
    }
}

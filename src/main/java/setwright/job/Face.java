package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A face cut over the whole side.
 *
 * @param across finished size from the opposite side to this face
 * @param finish mean roughness; null where the drawing is silent
 * @param got how the size is got
 */
public record Face(
        String id,
        String note,
        Side side,
        Size across,
        @Nullable Typed<Length> finish,
        GotBy got) implements Feature {
    @Override
    public Kind kind() {
        return Kind.FACE;
    }
}

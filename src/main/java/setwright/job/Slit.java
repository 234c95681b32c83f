package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A narrow slit, sawn.
 *
 * @param width of the kerf
 * @param depth below the side; null: through
 * @param length along it; null: right across
 * @param place its middle
 * @param finish mean roughness; null where the drawing is silent
 */
public record Slit(
        String id,
        String note,
        Side side,
        Size width,
        @Nullable Size depth,
        @Nullable Size length,
        Placed place,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.SLIT;
    }
}

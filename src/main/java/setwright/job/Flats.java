package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Flats round an axis square to the side: two, four, six...
 *
 * @param count how many
 * @param across over opposite flats; from flat to the far side where the count is odd
 * @param length below the side
 * @param finish mean roughness; null where the drawing is silent
 */
public record Flats(
        String id,
        String note,
        Side side,
        int count,
        Size across,
        Size length,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.FLATS;
    }
}

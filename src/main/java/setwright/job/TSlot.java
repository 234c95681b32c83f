package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A T-slot.
 *
 * @param neck width of the neck
 * @param depth from the side to the floor
 * @param headWidth width of the head
 * @param headHeight height of the head
 * @param length overall; null: open at both ends
 * @param place its middle
 * @param finish mean roughness; null where the drawing is silent
 */
public record TSlot(
        String id,
        String note,
        Side side,
        Size neck,
        Size depth,
        Size headWidth,
        Size headHeight,
        @Nullable Size length,
        Placed place,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.T_SLOT;
    }
}

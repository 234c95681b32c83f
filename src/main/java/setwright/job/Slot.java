package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A straight slot.
 *
 * @param width across it
 * @param depth below the side; null: through
 * @param length overall, between the ends; null: open at both ends
 * @param place its middle
 * @param finish mean roughness; null where the drawing is silent
 */
public record Slot(
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
    /** Whether a cutter can come in from an end. */
    public boolean open() {
        return length == null;
    }

    @Override
    public Kind kind() {
        return Kind.SLOT;
    }
}

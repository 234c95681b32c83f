package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A face at an angle to its side.
 *
 * @param falls towards which edge it goes down
 * @param angle from the side
 * @param depth at its lower edge, below the side; null: it starts at the opposite edge
 * @param finish mean roughness; null where the drawing is silent
 */
public record InclinedFace(
        String id,
        String note,
        Side side,
        Edge falls,
        Typed<Angle> angle,
        @Nullable Size depth,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    @Override
    public Kind kind() {
        return Kind.INCLINED_FACE;
    }
}

package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Broken edges.
 *
 * @param of id of the feature whose edge it is; {@code outline} for the outline of the side
 * @param width of the chamfer on the side
 * @param angle from the side
 * @param finish mean roughness; null where the drawing is silent
 */
public record Chamfer(
        String id,
        String note,
        Side side,
        String of,
        Size width,
        Typed<Angle> angle,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    /** Written in place of a feature for the outline of the side. */
    public static final String OUTLINE = "outline";

    @Override
    public Kind kind() {
        return Kind.CHAMFER;
    }
}

package setwright.job;

import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Equal things round an axis square to the side.
 *
 * @param what teeth, splines, graduations, flats or holes
 * @param count in a full turn
 * @param diameter of the circle or edge that they are on
 * @param width of one; null where the tool decides
 * @param depth of one
 * @param length of one, radial or along; null where it has none
 * @param axis place of the axis
 * @param marks the longer lines among graduations; null where all are alike
 * @param tooth of a gear; null where it is none or is not known
 * @param finish mean roughness; null where the drawing is silent
 */
public record Divided(
        String id,
        String note,
        Side side,
        What what,
        int count,
        Size diameter,
        @Nullable Size width,
        Size depth,
        @Nullable Size length,
        Placed axis,
        @Nullable Marks marks,
        @Nullable Tooth tooth,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    /** What is divided. */
    public enum What {
        TEETH,
        SPLINES,
        GRADUATIONS,
        FLATS,
        HOLES
    }

    @Override
    public Kind kind() {
        return Kind.DIVIDED;
    }
}

package setwright.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.geometry.Side;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * An outline cut round, inside or outside.
 *
 * @param inside whether the outline is a window; else the part stays within it
 * @param corners in order anticlockwise, from the lower left corner of the side
 * @param depth below the side; null: through
 * @param finish mean roughness; null where the drawing is silent
 */
public record ProfileCut(
        String id,
        String note,
        Side side,
        boolean inside,
        List<Corner> corners,
        @Nullable Size depth,
        @Nullable Typed<Length> finish,
        GotBy got)
        implements Feature {
    public ProfileCut {
        corners = List.copyOf(corners);
    }

    @Override
    public Kind kind() {
        return Kind.PROFILE;
    }
}

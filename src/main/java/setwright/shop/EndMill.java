package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * An end mill or slot drill.
 *
 * @param helix angle of the flutes
 * @param centreCutting whether it cuts at the centre and may be fed straight down
 * @param cornerRadius radius at its tip, half the diameter for a ball nose; null where its corners are square
 * @param wave from crest to trough of the waves along the edges of a roughing mill; null where they are smooth
 */
public record EndMill(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Angle> helix,
        boolean centreCutting,
        @Nullable Typed<Length> cornerRadius,
        @Nullable Typed<Length> wave,
        Kept kept,
        String source)
        implements Cutter {

    /** Whether it leaves a square corner and a plain wall, as slots, steps and pockets ask. */
    public boolean plain() {
        return cornerRadius == null && wave == null;
    }

    @Override
    public double fluteHelix() {
        return helix.inside();
    }

    @Override
    public Form form() {
        return Form.END_MILL;
    }
}

package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * An end mill or slot drill with square corners.
 *
 * @param helix angle of the flutes
 * @param centreCutting whether it cuts at the centre and may be fed straight down
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
        Kept kept,
        String source)
        implements Cutter {

    @Override
    public double fluteHelix() {
        return helix.inside();
    }

    @Override
    public Form form() {
        return Form.END_MILL;
    }
}

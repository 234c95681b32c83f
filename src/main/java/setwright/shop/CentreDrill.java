package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A centre drill: a pilot with a countersink behind it.
 *
 * @param diameter of the body, which the countersink reaches to
 * @param includedAngle of the countersink, 60 degrees for centres
 */
public record CentreDrill(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Angle> includedAngle,
        Typed<Length> pilotDiameter,
        Typed<Length> pilotLength,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.CENTRE_DRILL;
    }
}

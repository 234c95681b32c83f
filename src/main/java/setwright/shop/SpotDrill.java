package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A short stiff drill that marks where a drill has to start.
 *
 * @param pointAngle included angle of the point
 */
public record SpotDrill(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Angle> pointAngle,
        Kept kept,
        String source)
        implements Cutter {

    @Override
    public double tipAngle() {
        return pointAngle.inside();
    }

    @Override
    public Form form() {
        return Form.SPOT_DRILL;
    }
}

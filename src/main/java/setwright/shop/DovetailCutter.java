package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A dovetail cutter.
 *
 * @param diameter the largest, at the tip
 * @param angle of the flank to the floor
 * @param height of the head along the axis
 */
public record DovetailCutter(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Angle> angle,
        Typed<Length> height,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.DOVETAIL_CUTTER;
    }
}

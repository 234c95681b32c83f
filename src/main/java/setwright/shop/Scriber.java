package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A point that marks graduations with the spindle locked.
 *
 * @param diameter of its body
 * @param pointAngle included angle of the point
 */
public record Scriber(
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
    public Form form() {
        return Form.SCRIBER;
    }
}

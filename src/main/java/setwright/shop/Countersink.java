package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A countersink.
 *
 * @param diameter the largest that it cuts
 * @param includedAngle of its cone
 */
public record Countersink(
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
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public double tipAngle() {
        return includedAngle.inside();
    }

    @Override
    public Form form() {
        return Form.COUNTERSINK;
    }
}

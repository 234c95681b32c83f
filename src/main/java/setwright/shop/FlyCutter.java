package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.SpindleSpeed;
import setwright.quantity.Typed;

/**
 * A fly cutter: one tool bit in a body, so its overall length is that of the body.
 *
 * @param diameter the circle that the bit is set to
 * @param sweepLeast smallest circle that the bit can be set to
 * @param fastest speed that it is safe to run at
 */
public record FlyCutter(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Length> sweepLeast,
        Typed<SpindleSpeed> fastest,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.FLY_CUTTER;
    }
}

package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A corner-rounding cutter: leaves a quarter circle on an edge.
 *
 * @param diameter the largest that it cuts
 * @param radius that it leaves
 * @param tipDiameter the smallest, at the tip
 */
public record CornerRounder(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Length> radius,
        Typed<Length> tipDiameter,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.CORNER_ROUNDER;
    }
}

package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A chamfer mill.
 *
 * @param diameter the largest that it cuts
 * @param includedAngle of its cone
 * @param tipDiameter the flat at its tip
 */
public record ChamferMill(
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
        Typed<Length> tipDiameter,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.CHAMFER_MILL;
    }
}

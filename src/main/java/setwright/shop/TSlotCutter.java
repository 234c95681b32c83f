package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A T-slot cutter: widens a slot at its floor.
 *
 * @param diameter of the head
 * @param headWidth height of the head along the axis
 * @param neckDiameter behind the head; what has to pass the slot
 */
public record TSlotCutter(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Length> headWidth,
        Typed<Length> neckDiameter,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.T_SLOT_CUTTER;
    }
}

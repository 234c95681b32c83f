package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A face mill with inserts or brazed teeth on an arbor; its shank is the arbor's pilot.
 *
 * @param leadAngle 0 for a square shoulder
 * @param bodyHeight from the cutting edge to the face that sits on its arbor
 */
public record FaceMill(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Angle> leadAngle,
        Typed<Length> bodyHeight,
        Kept kept,
        String source)
        implements Cutter {

    @Override
    public double edgeLead() {
        return leadAngle.inside();
    }

    @Override
    public Form form() {
        return Form.FACE_MILL;
    }
}

package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A machine reamer.
 *
 * @param fit the hole that it is ground for, for instance {@code H7}
 * @param bevel length of the lead at its tip
 */
public record Reamer(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        String fit,
        Typed<Length> bevel,
        Kept kept,
        String source)
        implements Cutter {

    @Override
    public Form form() {
        return Form.REAMER;
    }
}

package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A boring bar for the boring head.
 *
 * @param diameter the least bore that it goes into
 * @param reach depth of the bore that it can reach
 */
public record BoringBar(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Length> neckDiameter,
        Typed<Length> reach,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.BORING_BAR;
    }
}

package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A cutter for Woodruff seats.
 *
 * @param neckDiameter behind the head; what has to clear the shaft
 */
public record KeyseatCutter(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Length> width,
        Typed<Length> neckDiameter,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.KEYSEAT_CUTTER;
    }
}

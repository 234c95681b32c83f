package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A counterbore with a pilot, or a cutter that is fitted to its bar below the work and drawn up.
 *
 * @param pilotDiameter of the pilot that runs in the hole
 * @param fromBehind whether it is fitted to its bar from below and cuts upward; its pilot is then the bar
 * @param serves the screw whose head it makes room for, for instance {@code M6}
 */
public record Counterbore(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        Typed<Length> pilotDiameter,
        boolean fromBehind,
        String serves,
        Kept kept,
        String source)
        implements Cutter {
    @Override
    public Form form() {
        return Form.COUNTERBORE;
    }
}

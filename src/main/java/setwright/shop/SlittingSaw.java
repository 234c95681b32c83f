package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A slitting saw, held on a stub arbor.
 *
 * @param bore of the hole that sits on its arbor
 * @param width from face to face along the axis
 */
public record SlittingSaw(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> bore,
        Typed<Length> width,
        int teeth,
        Kept kept,
        String source)
        implements BoredCutter {
    @Override
    public Form form() {
        return Form.SLITTING_SAW;
    }
}

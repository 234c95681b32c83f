package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A shell end mill: cuts on its face and on its side like an end mill, and sits on an arbor.
 *
 * @param bore of the hole that sits on its arbor
 * @param width from face to face along the axis
 */
public record ShellMill(
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
        return Form.SHELL_MILL;
    }
}

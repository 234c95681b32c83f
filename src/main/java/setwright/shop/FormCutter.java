package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A form cutter on an arbor, such as an involute gear cutter.
 *
 * @param bore of the hole that sits on its arbor
 * @param width from face to face along the axis
 * @param profile what it leaves, for instance {@code involute module 1, 26 to 34 teeth}
 */
public record FormCutter(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> bore,
        Typed<Length> width,
        int teeth,
        String profile,
        Kept kept,
        String source)
        implements BoredCutter {
    @Override
    public Form form() {
        return Form.FORM_CUTTER;
    }
}

package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A machine or hand tap.
 *
 * @param thread designation, for instance {@code M8}
 * @param flute straight, spiral point, spiral flute or forming
 * @param leadThreads threads of lead; never named plug, which means two things
 */
public record Tap(
        String id,
        String name,
        ToolMaterial material,
        Typed<Length> diameter,
        Typed<Length> shank,
        ShankForm shankForm,
        Typed<Length> fluteLength,
        Typed<Length> overallLength,
        int teeth,
        String thread,
        Flute flute,
        int leadThreads,
        Kept kept,
        String source)
        implements Cutter {

    @Override
    public Form form() {
        return Form.TAP;
    }

    /** How the tap carries its chips. */
    public enum Flute {
        STRAIGHT,
        SPIRAL_POINT,
        SPIRAL_FLUTE,
        FORM
    }
}

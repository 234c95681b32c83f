package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * T-slot nuts.
 *
 * @param slotWidth of the T-slot that they fit
 * @param thread designation, for instance {@code M12}
 * @param width of the foot
 * @param height from the foot to the top of the neck
 */
public record TNut(
        String id,
        String name,
        Typed<Length> slotWidth,
        String thread,
        Typed<Length> width,
        Typed<Length> height,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.T_NUT;
    }
}

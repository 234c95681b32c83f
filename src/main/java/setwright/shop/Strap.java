package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A strap clamp; the straps of one size are a set.
 *
 * @param slotWidth of the slot or hole that the stud goes through
 */
public record Strap(
        String id,
        String name,
        Form form,
        Typed<Length> length,
        Typed<Length> width,
        Typed<Length> thickness,
        Typed<Length> slotWidth,
        int pieces,
        Kept kept,
        String source)
        implements TableClamp {
    @Override
    public Kind kind() {
        return Kind.STRAP;
    }

    /** The forms of strap. */
    public enum Form {
        PLAIN,
        GOOSENECK,
        U,
        STEP,
        /** With a round nose that goes into a hole in the side of the work. */
        FINGER
    }
}

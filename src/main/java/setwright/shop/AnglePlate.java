package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * An angle plate, with its upright face to the work.
 *
 * @param legDepth of the foot on the table
 * @param adjustable whether its face tilts
 */
public record AnglePlate(
        String id,
        String name,
        Typed<Length> faceWidth,
        Typed<Length> faceHeight,
        Typed<Length> legDepth,
        Typed<Length> thickness,
        boolean adjustable,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.ANGLE_PLATE;
    }
}

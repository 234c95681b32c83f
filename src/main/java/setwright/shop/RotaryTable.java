package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Torque;
import setwright.quantity.Typed;

/**
 * A rotary table.
 *
 * @param heightLying of its face over the table when it lies
 * @param centreStanding height of its axis when it stands; null where it only lies
 * @param ratio turns of the handle for one of the table
 * @param division one division of its dial or vernier
 * @param lock torque that its lock holds; null where nobody knows
 */
public record RotaryTable(
        String id,
        String name,
        Typed<Length> diameter,
        Typed<Length> heightLying,
        @Nullable Typed<Length> centreStanding,
        int ratio,
        Typed<Angle> division,
        Typed<Length> slotWidth,
        int slots,
        @Nullable Typed<Torque> lock,
        Typed<Mass> mass,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.ROTARY_TABLE;
    }
}

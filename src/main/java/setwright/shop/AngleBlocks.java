package setwright.shop;

import java.util.List;
import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A set of angle blocks.
 */
public record AngleBlocks(
        String id,
        String name,
        List<Typed<Angle>> angles,
        Typed<Length> length,
        Typed<Length> thickness,
        Kept kept,
        String source)
        implements Owned {
    public AngleBlocks {
        angles = List.copyOf(angles);
    }

    @Override
    public Kind kind() {
        return Kind.ANGLE_BLOCKS;
    }
}

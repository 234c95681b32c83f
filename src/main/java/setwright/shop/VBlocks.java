package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A matched pair of V-blocks.
 *
 * @param angle included angle of the vee
 * @param least smallest round that they hold
 * @param greatest largest round that they hold
 * @param apexHeight of the sharp bottom of the vee over the foot
 */
public record VBlocks(
        String id,
        String name,
        Typed<Angle> angle,
        Typed<Length> least,
        Typed<Length> greatest,
        Typed<Length> length,
        Typed<Length> width,
        Typed<Length> height,
        Typed<Length> apexHeight,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.V_BLOCKS;
    }

    /** Height of the middle of a round bar over the block's foot, mm: apex height + d / (2 sin(angle / 2)). */
    public double centreHeight(double diameter) {
        return apexHeight.inside() + diameter / (2 * StrictMath.sin(angle.inside() / 2));
    }
}

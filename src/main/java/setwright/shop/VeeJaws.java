package setwright.shop;

import setwright.quantity.Angle;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A pair of vise jaws of which one has a vee, upright in its middle and level along it; the other is plain.
 *
 * @param jawWidth of the vise that they fit
 * @param thickness of one jaw
 * @param angle included angle of the vees
 * @param least smallest round that they hold
 * @param greatest largest round that they hold
 * @param veeHeight middle of the level vee over the vise bed
 */
public record VeeJaws(
        String id,
        String name,
        Typed<Length> jawWidth,
        Typed<Length> height,
        Typed<Length> thickness,
        Typed<Angle> angle,
        Typed<Length> least,
        Typed<Length> greatest,
        Typed<Length> veeHeight,
        Kept kept,
        String source)
        implements OtherJaws {
    @Override
    public Kind kind() {
        return Kind.VEE_JAWS;
    }
}

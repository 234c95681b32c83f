package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Soft jaws, to be cut to the part; a pair counts as one.
 *
 * @param jawWidth of the vise that they fit
 * @param thickness of one jaw, uncut
 * @param jawMaterial what they are made of
 */
public record SoftJaws(
        String id,
        String name,
        Typed<Length> jawWidth,
        Typed<Length> height,
        Typed<Length> thickness,
        String jawMaterial,
        Kept kept,
        String source)
        implements OtherJaws {
    @Override
    public Kind kind() {
        return Kind.SOFT_JAWS;
    }
}

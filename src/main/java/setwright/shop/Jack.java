package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Screw jacks of one size.
 *
 * @param least lowest height
 * @param greatest highest height
 * @param foot diameter of the foot
 */
public record Jack(
        String id,
        String name,
        Typed<Length> least,
        Typed<Length> greatest,
        Typed<Length> foot,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.JACK;
    }
}

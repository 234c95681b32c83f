package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Torque;
import setwright.quantity.Typed;

/**
 * A mandrel that carries a part by its bore.
 *
 * @param form how it holds
 * @param least smallest bore that it fills
 * @param greatest largest bore that it fills
 * @param length of what carries the bore
 * @param torqueLow what it turns the part with on a bad day
 * @param torque what it usually turns the part with
 */
public record Mandrel(
        String id,
        String name,
        Form form,
        Typed<Length> least,
        Typed<Length> greatest,
        Typed<Length> length,
        Typed<Torque> torqueLow,
        Typed<Torque> torque,
        Kept kept,
        String source)
        implements Owned {
    /** How it holds. */
    public enum Form {
        TAPER,
        EXPANDING,
        NUT
    }

    @Override
    public Kind kind() {
        return Kind.MANDREL;
    }
}

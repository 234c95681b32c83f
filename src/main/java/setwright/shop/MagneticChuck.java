package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Stress;
import setwright.quantity.Typed;

/**
 * A magnetic chuck.
 *
 * @param pull on thick clean steel that covers it
 */
public record MagneticChuck(
        String id,
        String name,
        Typed<Length> length,
        Typed<Length> width,
        Typed<Length> height,
        Typed<Stress> pull,
        Typed<Mass> mass,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.MAGNETIC_CHUCK;
    }
}

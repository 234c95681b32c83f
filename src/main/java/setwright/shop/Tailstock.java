package setwright.shop;

import setwright.quantity.Force;
import setwright.quantity.Length;
import setwright.quantity.Mass;
import setwright.quantity.Typed;

/**
 * A tailstock that bears the far end of work in a dividing head or an upright rotary table.
 *
 * @param centreLow lowest height of its centre
 * @param centreHigh highest height of its centre
 * @param length of its foot along the table
 * @param press what its centre is wound in with
 */
public record Tailstock(
        String id,
        String name,
        Typed<Length> centreLow,
        Typed<Length> centreHigh,
        Typed<Length> length,
        Typed<Length> width,
        Typed<Force> press,
        Typed<Mass> mass,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.TAILSTOCK;
    }
}

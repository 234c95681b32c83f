package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * How a cutter in its holder on a machine rang when it was tapped at its tip. The source says who measured it and when.
 *
 * @param stickOut how far the cutter stood out of its holder
 * @param x the mode along the table's X
 * @param y the mode along the table's Y
 */
public record TapTest(
        String id,
        String name,
        String machine,
        String holder,
        String cutter,
        Typed<Length> stickOut,
        MeasuredMode x,
        MeasuredMode y,
        String source)
        implements ShopRow {
    @Override
    public Kind kind() {
        return Kind.TAP_TEST;
    }
}

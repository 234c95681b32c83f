package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A collet block.
 *
 * @param sides four or six
 * @param collet the collets that it takes, for instance {@code 5C}
 * @param greatestRound largest round that it holds
 */
public record ColletBlock(
        String id,
        String name,
        int sides,
        String collet,
        Typed<Length> greatestRound,
        Typed<Length> acrossFlats,
        Typed<Length> length,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.COLLET_BLOCK;
    }
}

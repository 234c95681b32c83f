package setwright.shop;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Blocks with three ground sizes, such as 1-2-3 blocks.
 *
 * @param sizes three, the smallest first
 */
public record SetUpBlocks(String id, String name, List<Typed<Length>> sizes, int pieces, Kept kept, String source)
        implements Owned {
    public SetUpBlocks {
        sizes = List.copyOf(sizes);
    }

    @Override
    public Kind kind() {
        return Kind.SET_UP_BLOCKS;
    }
}

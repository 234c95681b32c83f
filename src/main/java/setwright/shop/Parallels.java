package setwright.shop;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** A set of matched pairs of parallels of one thickness and length; counts as one set. */
public record Parallels(
        String id,
        String name,
        Typed<Length> thickness,
        Typed<Length> length,
        List<Typed<Length>> heights,
        Kept kept,
        String source)
        implements Owned {

    public Parallels {
        heights = List.copyOf(heights);
    }

    @Override
    public Kind kind() {
        return Kind.PARALLELS;
    }
}

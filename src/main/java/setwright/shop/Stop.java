package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * A stop that the work is brought against.
 *
 * @param height highest point that it can be set to, over the table or the vise bed
 */
public record Stop(String id, String name, Form form, Typed<Length> height, Kept kept, String source) implements Owned {
    @Override
    public Kind kind() {
        return Kind.STOP;
    }

    /** Where a stop is fixed. */
    public enum Form {
        TABLE,
        VISE
    }
}

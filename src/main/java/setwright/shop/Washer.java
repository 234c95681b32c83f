package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Washers for studs.
 *
 * @param thread that they go on, for instance {@code M12}
 * @param outside diameter
 * @param height of the washer, of a spherical pair together
 */
public record Washer(
        String id,
        String name,
        Form form,
        String thread,
        Typed<Length> outside,
        Typed<Length> height,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.WASHER;
    }

    /** The forms of washer. */
    public enum Form {
        FLAT,
        /** A spherical one on a dished one: it lets the nut sit square on a slanted strap. */
        SPHERICAL
    }
}

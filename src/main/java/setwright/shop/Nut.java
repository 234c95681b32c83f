package setwright.shop;

import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Nuts for studs.
 *
 * @param thread designation, for instance {@code M12}
 * @param across flats, or the flange of a flange nut
 */
public record Nut(
        String id,
        String name,
        Form form,
        String thread,
        Typed<Length> across,
        Typed<Length> height,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.NUT;
    }

    /** The forms of nut. */
    public enum Form {
        /** Plain, 1.5 diameters high. */
        TALL,
        FLANGE,
        /** With a spherical face that takes the place of a spherical washer. */
        SPHERICAL,
        COUPLING
    }
}

package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Stock for a fixture plate, or a plate that is already drilled.
 *
 * @param holePitch of its grid; null where it is not drilled
 * @param thread of its holes; null where it is not drilled
 */
public record FixturePlate(
        String id,
        String name,
        Typed<Length> length,
        Typed<Length> width,
        Typed<Length> thickness,
        @Nullable Typed<Length> holePitch,
        @Nullable String thread,
        Kept kept,
        String source)
        implements Owned {
    @Override
    public Kind kind() {
        return Kind.FIXTURE_PLATE;
    }
}

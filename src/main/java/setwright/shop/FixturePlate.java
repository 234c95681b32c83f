package setwright.shop;

import org.jspecify.annotations.Nullable;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Stock for a fixture plate or a board, or a plate that is already drilled.
 *
 * @param stuff what it is made of; null where nobody wrote it down, then aluminium
 * @param holePitch of its grid; null where it is not drilled
 * @param thread of its holes; null where it is not drilled
 */
public record FixturePlate(
        String id,
        String name,
        Typed<Length> length,
        Typed<Length> width,
        Typed<Length> thickness,
        @Nullable Stuff stuff,
        @Nullable Typed<Length> holePitch,
        @Nullable String thread,
        Kept kept,
        String source)
        implements Owned {
    /** What a plate is made of. */
    public enum Stuff {
        ALUMINIUM(2700),
        STEEL(7850),
        CAST_IRON(7200),
        MDF(750),
        PLYWOOD(650);

        private final double density;

        Stuff(double density) {
            this.density = density;
        }

        /** kg/m³ (from memory). */
        public double density() {
            return density;
        }

        /** Whether screws hold in it and cutters may run into it. */
        public boolean board() {
            return this == MDF || this == PLYWOOD;
        }
    }

    public Stuff madeOf() {
        return stuff == null ? Stuff.ALUMINIUM : stuff;
    }

    /** kg. */
    public double mass() {
        return length.inside() * width.inside() * thickness.inside() * madeOf().density() * 1e-9;
    }

    @Override
    public Kind kind() {
        return Kind.FIXTURE_PLATE;
    }
}

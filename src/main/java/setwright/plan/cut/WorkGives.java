package setwright.plan.cut;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Band;
import setwright.quantity.Worked;

/**
 * How far the work gives where it is cut, mm.
 *
 * @param band under the expected force, and with a worn edge
 * @param span what stands free: the length out, between supports, the height of a wall, the shorter side of a floor; mm
 * @param thick what bends, mm
 * @param allowed how far the surface that is cut may be out either way, mm; null where the drawing leaves it general
 */
public record WorkGives(
        Where where,
        Worked worked,
        Band band,
        double span,
        double thick,
        @Nullable Double allowed) {
    /** What of the work bends. */
    public enum Where {
        /** What stands out beyond the jaws. */
        OVERHANG,
        /** Between two parallels or pieces of packing. */
        BETWEEN_SUPPORTS,
        /** A round bar between its supports. */
        SHAFT,
        /** What a pocket, slot or step leaves beside it. */
        WALL,
        /** What a pocket leaves under it. */
        FLOOR
    }

    /** The share of what is allowed. */
    Optional<Band> used() {
        return Optional.ofNullable(allowed).map(most -> band.times(1 / most));
    }

    public double inside() {
        return worked.inside();
    }
}

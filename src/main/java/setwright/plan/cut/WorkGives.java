package setwright.plan.cut;

import setwright.quantity.Band;
import setwright.quantity.Worked;

/**
 * How far the work gives where it is cut, mm.
 *
 * @param band under the expected force, and with a worn edge
 * @param span what stands free: the length out, between supports, the height of a wall, the shorter side of a floor; mm
 * @param thick what bends, mm
 */
public record WorkGives(Where where, Worked worked, Band band, double span, double thick) {
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

    public double inside() {
        return worked.inside();
    }
}

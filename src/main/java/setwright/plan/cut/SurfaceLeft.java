package setwright.plan.cut;

import setwright.quantity.Band;
import setwright.quantity.Worked;

/**
 * How far a pass leaves the surface that it cuts out, normal to it, mm: above nought metal stays on, below it the tool went
 * in.
 *
 * @param normal where it is left out most, with its sign
 * @param band with the stiff and the soft ends of all springs
 * @param atTop at the top of the cut; of a bore and a face the same everywhere
 * @param atBottom at its bottom
 */
public record SurfaceLeft(Surface surface, Worked normal, Band band, double atTop, double atBottom) {
    /** The surfaces that a pass leaves. */
    public enum Surface {
        /** A wall beside the cutter, by the pass that leaves it. */
        WALL("wall"),
        /** A wall as roughing leaves it for the last pass. */
        ROUGHED_WALL("wall for the last pass"),
        /** The side of a slot at size that is cut climb. */
        CLIMB_SIDE("climb side of the slot"),
        /** The side of a slot at size that is cut conventional. */
        CONVENTIONAL_SIDE("conventional side of the slot"),
        /** A bore, on the radius. */
        BORE("bore, on the radius"),
        FACE("face");

        private final String words;

        Surface(String words) {
            this.words = words;
        }

        /** As printed. */
        public String words() {
            return words;
        }
    }

    public double inside() {
        return normal.inside();
    }

    /** Both ends of a wall differ by this, mm. */
    public double taper() {
        return atTop - atBottom;
    }
}

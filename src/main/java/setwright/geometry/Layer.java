package setwright.geometry;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Region;

/**
 * The stock between two heights at which nothing changes.
 *
 * @param uncut the plan of the blank there
 * @param gone the cuts that take something away all over these heights
 */
record Layer(Prism prism, Region uncut, List<Single> gone) {
    /** The layers whose plans together hold those of all. */
    static List<Layer> outermost(List<Layer> layers) {
        List<Layer> kept = new ArrayList<>();
        for (Layer layer : layers) {
            if (kept.stream().noneMatch(other -> other.holds(layer))) {
                kept.removeIf(layer::holds);
                kept.add(layer);
            }
        }
        return kept;
    }

    /** True where it is certain that the plan of the other lies within this one: no less was cut from it. */
    private boolean holds(Layer other) {
        return gone.stream().allMatch(Single::isStraight) && other.gone.containsAll(gone) && isUnder(other);
    }

    /** True where it is certain that the blank is no less wide here: the same, or the rectangle of a lying bar. */
    private boolean isUnder(Layer other) {
        return uncut.equals(other.uncut) || uncut.isRectangle() && uncut.box().holds(other.uncut.box());
    }

    /** True where {@code below} joins the layer on it from below and holds this one. */
    boolean standsOn(Layer below, Layer joint) {
        return Math.abs(below.prism.zHigh() - joint.prism.zLow()) <= Heights.SAME && below.holds(this);
    }
}

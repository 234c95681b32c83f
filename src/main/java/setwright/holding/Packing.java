package setwright.holding;

/**
 * What a part sits on in a vise, usually a pair of parallels, as the rectangle over all: left, right, front and back end
 * of the faces that touch it, mm from its left front bottom corner.
 */
public record Packing(double left, double right, double front, double back, Friction friction) {
    public Packing {
        if (!(left < right && front < back)) {
            throw new IllegalArgumentException("Packing reaches from left to right and from front to back, not from "
                    + left + " to " + right + " and from " + front + " to " + back + " mm.");
        }
    }

    /** A pair of ground parallels along the jaws, under the whole length, their outer faces that far from the jaws. */
    public static Packing parallels(Held part, double inset) {
        return new Packing(0, part.length(), inset, part.depth() - inset, Friction.GROUND_PARALLEL);
    }
}

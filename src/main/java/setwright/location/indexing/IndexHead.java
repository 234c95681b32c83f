package setwright.location.indexing;

import java.util.List;
import setwright.quantity.Rational;

/**
 * A dividing head, or a rotary table with a plate in place of its dial.
 *
 * @param ratio turns of the crank for one of the spindle
 * @param mounted name of the plate that is on it; empty where that is not known
 * @param gears teeth of the change gears that belong to it, one entry a gear
 */
public record IndexHead(int ratio, IndexPlates plates, String mounted, List<Integer> gears) {
    /** The twelve change gears that come with a head (from memory; they agree with every published train seen). */
    public static final List<Integer> TWELVE_GEARS = List.of(24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100);

    private static final int MOST_RATIO = 1000;

    public IndexHead {
        gears = List.copyOf(gears);
        if (ratio < 1 || ratio > MOST_RATIO) {
            throw new IllegalArgumentException(
                    "A worm has a ratio of 1 to " + MOST_RATIO + " turns, not " + ratio + ".");
        }
    }

    public static IndexHead of(int ratio, IndexPlates plates) {
        return new IndexHead(ratio, plates, "", TWELVE_GEARS);
    }

    /** Crank turns for so many divisions on: R k / N. */
    public Rational turns(int divisions, int steps) {
        Divisions.require(divisions);
        return Rational.of((long) ratio * steps, divisions);
    }

    /** Crank turns for an angle: R θ / 360. */
    public Rational turns(Rational degrees) {
        return degrees.times(ratio).over(Rational.of(360));
    }

    /** Degrees that the spindle turns by so many turns of the crank. */
    public Rational degrees(Rational turns) {
        return turns.times(360).over(Rational.of(ratio));
    }
}

package setwright.plan.part;

import java.util.List;
import setwright.geometry.plane.PlanMap;
import setwright.geometry.plane.Region;

/**
 * What milling one feature asks: where the cutter's axis runs at every depth, and what is gone in plan afterwards.
 *
 * @param lanes in the order they are run
 * @param high how far above the floor it cuts; infinite: all that stands on it, in passes from the surface down
 * @param gone in plan; none where it cannot be said with upright walls, and the stock then counts as not cut
 * @param scribed whether it is lines that differ in length from position to position
 */
record Milled(List<Lane> lanes, Region gone, double high, boolean scribed) {
    static final Milled NOTHING = new Milled(List.of(), Region.NONE);

    Milled {
        lanes = List.copyOf(lanes);
    }

    Milled(List<Lane> lanes, Region gone) {
        this(lanes, gone, Double.POSITIVE_INFINITY);
    }

    Milled(List<Lane> lanes, Region gone, double high) {
        this(lanes, gone, high, false);
    }

    /** The same cut at the floor only, under what stands above it. */
    Milled under(double height) {
        return new Milled(lanes, gone, height);
    }

    /** The same way, of which nothing counts as gone. */
    Milled notGone() {
        return new Milled(lanes, Region.NONE, high, scribed);
    }

    Milled mapped(PlanMap map) {
        return new Milled(lanes.stream().map(lane -> lane.mapped(map)).toList(), gone.mapped(map), high, scribed);
    }
}

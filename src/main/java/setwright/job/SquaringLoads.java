package setwright.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import setwright.geometry.Side;

/**
 * The loads in which a block gets its six sides square to each other (common practice): the best large side first, the two
 * edges against it, then the other large side, the ends last; a side that is clean already is not cut.
 */
record SquaringLoads(Block block, Set<Side> clean, Set<Side> worked, Set<Side> later) {
    /**
     * One load.
     *
     * @param up the side that is cut
     * @param solid the side at the solid jaw
     * @param bar whether the side at the moving jaw is still rough, so that a round bar goes between
     * @param end whether it stands on end
     */
    record Load(Side up, Side solid, boolean bar, boolean end) {}

    /** Two opposite sides: the clean one, or the one that is cut from rough, and the one that is cut against it. */
    private record Pair(Side first, Side second) {}

    /**
     * @param clean the sides that need no cut
     * @param worked sides on which more is done than facing: where the second large one is, it comes last
     * @param later sides that the drawing faces after the opposite one
     */
    static List<Load> of(Block block, Set<Side> clean, Set<Side> worked, Set<Side> later) {
        return new SquaringLoads(block, clean, worked, later).loads();
    }

    private List<Load> loads() {
        List<Pair> pairs = pairs();
        Pair large = pairs.get(0);
        Pair edge = pairs.get(1);
        Pair end = pairs.get(2);
        List<Side> order = new ArrayList<>(
                List.of(large.first(), edge.first(), edge.second(), large.second(), end.first(), end.second()));
        if (worked.contains(large.second())) {
            order.remove(large.second());
            order.add(large.second());
        }
        Set<Side> done = EnumSet.noneOf(Side.class);
        done.addAll(clean);
        List<Load> loads = new ArrayList<>();
        for (Side up : order) {
            if (!clean.contains(up)) {
                Side solid = up == large.first() || up == large.second() ? edge.first() : large.first();
                loads.add(
                        new Load(up, solid, !done.contains(solid.opposite()), up == end.first() || up == end.second()));
                done.add(up);
            }
        }
        return loads;
    }

    /** The shortest way through the block has the large sides at its ends; the longest has the ends. */
    private List<Pair> pairs() {
        List<Pair> all = new ArrayList<>(List.of(pair(Side.BOTTOM), pair(Side.FRONT), pair(Side.LEFT)));
        all.sort(Comparator.comparingDouble(pair -> size(pair.first()).leastMm()));
        return all;
    }

    private Pair pair(Side usual) {
        boolean turned = clean.contains(usual.opposite()) && !clean.contains(usual) || later.contains(usual);
        return turned ? new Pair(usual.opposite(), usual) : new Pair(usual, usual.opposite());
    }

    private Size size(Side side) {
        return of(block, side);
    }

    /** From a side to the opposite one. */
    static Size of(Block block, Side side) {
        return switch (side) {
            case TOP, BOTTOM -> block.height();
            case FRONT, BACK -> block.depth();
            case LEFT, RIGHT -> block.length();
        };
    }
}

package setwright.location.angle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * Angle blocks that are put together, marks the same way round to add and turned about to take away. Worked in whole
 * millionths of a second of arc, so that what is possible comes out without an error.
 *
 * @param blocks those used, the largest first
 * @param error of the angle built, in the same millionths
 */
public record AngleStack(List<Block> blocks, long built, long error) {
    private static final long A_DEGREE = 3_600_000_000L;

    /** Three choices for each of half of them are still few. */
    private static final int MOST = 20;

    public static final Procedure STACK = new Procedure(
            "angle of the blocks",
            List.of(
                    "every block is left out, added or turned about and taken away",
                    "the nearest angle counts first, then the fewest blocks, then the fewest taken away"),
            Unit.DEG,
            Source.of("Combination angle gauges: proof that they may be added and subtracted (National Physical"
                    + " Laboratory gauges); the search is complete"));

    /** A block, added (1) or taken away (-1). */
    public record Block(long size, int sign) {
        public double degrees() {
            return (double) size / A_DEGREE;
        }
    }

    private record Half(List<Block> blocks, long sum, int away) {
        private static final Half NONE = new Half(List.of(), 0, 0);

        Half with(Block block) {
            List<Block> more = new ArrayList<>(blocks);
            more.add(block);
            return new Half(more, sum + block.sign() * block.size(), away + (block.sign() < 0 ? 1 : 0));
        }
    }

    public AngleStack {
        blocks = List.copyOf(blocks);
    }

    public double builtDegrees() {
        return (double) built / A_DEGREE;
    }

    public double errorDegrees() {
        return (double) error / A_DEGREE;
    }

    public static long ofDegrees(double degrees) {
        return Math.round(degrees * A_DEGREE);
    }

    /**
     * The best stack for an angle.
     *
     * @param wanted and the sizes in millionths of a second, see {@link #ofDegrees}
     */
    public static AngleStack nearest(long wanted, List<Long> sizes, boolean takeAway) {
        if (sizes.isEmpty() || sizes.size() > MOST || sizes.stream().anyMatch(size -> size <= 0)) {
            throw new IllegalArgumentException("A set of angle blocks has 1 to " + MOST + " pieces, each above 0.");
        }
        List<Long> sorted = sizes.stream().sorted(Comparator.reverseOrder()).toList();
        int middle = sorted.size() / 2;
        TreeMap<Long, Half> second = best(halves(sorted.subList(middle, sorted.size()), takeAway));
        Half found = Half.NONE;
        for (Half first : best(halves(sorted.subList(0, middle), takeAway)).values()) {
            long rest = wanted - first.sum();
            for (var other : java.util.Arrays.asList(second.floorEntry(rest), second.ceilingEntry(rest))) {
                if (other != null) {
                    found = better(found, joined(first, other.getValue()), wanted);
                }
            }
        }
        return new AngleStack(found.blocks(), found.sum(), found.sum() - wanted);
    }

    private static Half joined(Half one, Half other) {
        List<Block> blocks = new ArrayList<>(one.blocks());
        blocks.addAll(other.blocks());
        return new Half(blocks, one.sum() + other.sum(), one.away() + other.away());
    }

    private static Half better(Half one, Half other, long wanted) {
        return rank(wanted).compare(other, one) < 0 ? other : one;
    }

    private static Comparator<Half> rank(long wanted) {
        return Comparator.comparingLong((Half half) -> Math.abs(half.sum() - wanted))
                .thenComparingInt(half -> half.blocks().size())
                .thenComparingInt(Half::away);
    }

    private static TreeMap<Long, Half> best(List<Half> halves) {
        TreeMap<Long, Half> best = new TreeMap<>();
        for (Half half : halves) {
            best.merge(half.sum(), half, (one, other) -> better(one, other, half.sum()));
        }
        return best;
    }

    private static List<Half> halves(List<Long> sizes, boolean takeAway) {
        List<Half> halves = new ArrayList<>(List.of(Half.NONE));
        for (long size : sizes) {
            for (Half half : List.copyOf(halves)) {
                halves.add(half.with(new Block(size, 1)));
                if (takeAway) {
                    halves.add(half.with(new Block(size, -1)));
                }
            }
        }
        return halves;
    }
}

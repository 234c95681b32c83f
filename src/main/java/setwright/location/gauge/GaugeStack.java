package setwright.location.gauge;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * The fewest gauge blocks of a set for a height: each block once.
 *
 * @param blocks mm, the largest first
 * @param built mm
 */
public record GaugeStack(List<Double> blocks, double built) {
    /** From this many steps away a height that cannot be built is given up. */
    private static final int AROUND = 500;

    /** More fine blocks than this are never needed to make up the last figures. */
    private static final int FINE = 4;

    public static final Procedure STACK = new Procedure(
            "height of the stack",
            List.of(
                    "the last figure is made up first, then the next",
                    "of all stacks of the nearest height that with the fewest blocks counts"),
            Unit.MM,
            Source.of(
                    "Gauge-block practice: eliminate the last figure first (stacks published for an 81-piece inch and a"
                            + " 112-piece metric set); contents of the sets from memory"));

    public GaugeStack {
        blocks = List.copyOf(blocks);
    }

    /** @throws IllegalArgumentException where the height is below the smallest block or beyond the set */
    public static GaugeStack of(double height, GaugeSet set) {
        if (height < set.smallest() * (1 - 1e-9)) {
            throw new IllegalArgumentException("the smallest block of the set is "
                    + BigDecimal.valueOf(set.smallest()).stripTrailingZeros().toPlainString()
                    + " mm; nothing lower can be built.");
        }
        double reach = set.mm(set.blocks().stream()
                .filter(block -> block % set.coarse() == 0)
                .mapToInt(Integer::intValue)
                .sum());
        if (height > reach) {
            throw new IllegalArgumentException("the blocks of this set make no more than "
                    + BigDecimal.valueOf(reach).stripTrailingZeros().toPlainString() + " mm; take a larger set.");
        }
        int finest = set.finest();
        double wanted = height / set.step();
        long nearest = Math.round(wanted / finest) * finest;
        Search search = new Search(set);
        for (int away = 0; away <= AROUND; away++) {
            int side = wanted >= nearest ? finest : -finest;
            Optional<List<Integer>> found = search.fewest((int) nearest + away * side);
            found = found.isPresent() || away == 0 ? found : search.fewest((int) nearest - away * side);
            if (found.isPresent()) {
                return stacked(found.get(), set);
            }
        }
        throw new IllegalArgumentException("the set cannot build it or anything near it.");
    }

    private static GaugeStack stacked(List<Integer> steps, GaugeSet set) {
        return new GaugeStack(
                steps.stream().sorted(Comparator.reverseOrder()).map(set::mm).toList(),
                set.mm(steps.stream().mapToInt(Integer::intValue).sum()));
    }

    /** Fine blocks are tried out, the coarse rest is looked up. */
    private static final class Search {
        private final List<Integer> fine;
        private final CoarseRest rest;

        Search(GaugeSet set) {
            fine = set.blocks().stream()
                    .filter(block -> block % set.coarse() != 0)
                    .toList();
            rest = CoarseRest.of(
                    set.blocks().stream()
                            .filter(block -> block % set.coarse() == 0)
                            .toList(),
                    set.coarse());
        }

        Optional<List<Integer>> fewest(int steps) {
            @Nullable List<Integer> best = null;
            for (int count = 0; count <= FINE && (best == null || count < best.size()); count++) {
                best = tried(steps, count, fine.size() - 1, new ArrayList<>(), best);
            }
            return Optional.ofNullable(best);
        }

        private @Nullable List<Integer> tried(
                int left, int count, int from, List<Integer> taken, @Nullable List<Integer> best) {
            if (left < 0 || best != null && taken.size() + count >= best.size()) {
                return best;
            }
            if (count == 0) {
                int more = rest.pieces(left);
                if (more < 0 || best != null && taken.size() + more >= best.size()) {
                    return best;
                }
                List<Integer> found = new ArrayList<>(taken);
                found.addAll(rest.blocks(left));
                return found;
            }
            @Nullable List<Integer> found = best;
            for (int i = from; i >= count - 1; i--) {
                taken.add(fine.get(i));
                found = tried(left - fine.get(i), count - 1, i - 1, taken, found);
                taken.remove(taken.size() - 1);
            }
            return found;
        }
    }
}

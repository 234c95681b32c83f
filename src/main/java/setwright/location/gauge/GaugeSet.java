package setwright.location.gauge;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A set of gauge blocks in whole steps of its smallest difference.
 *
 * @param step length of one step, mm
 * @param blocks in steps, the smallest first
 * @param coarse of the blocks that are a multiple of it nothing finer is left to make up, steps
 */
public record GaugeSet(String name, double step, List<Integer> blocks, int coarse) {
    private static final double INCH_STEP = 0.00254;
    private static final double METRIC_STEP = 0.0005;
    private static final List<GaugeSet> ALL = List.of(
            set("81-inch", INCH_STEP, 500, "1001-1009/1 1010-1490/10 500-9500/500 10000-40000/10000"),
            set(
                    "36-inch",
                    INCH_STEP,
                    1000,
                    "1001-1009/1 1010-1090/10 1100-1900/100 500 1000-5000/1000 10000 20000 40000"),
            set("47-metric", METRIC_STEP, 2000, "2010 2020-2380/20 2400-3800/200 2000-18000/2000 20000-200000/20000"),
            set("88-metric", METRIC_STEP, 1000, "2001 2002-2018/2 2020-2980/20 1000-19000/1000 20000-200000/20000"),
            set("112-metric", METRIC_STEP, 1000, "2001 2002-2018/2 2020-2980/20 1000-49000/1000 50000-200000/50000"));

    public GaugeSet {
        blocks = List.copyOf(blocks);
    }

    /** The sets whose contents are known here: from memory, agreeing with published stacks of the 81 and 112. */
    public static List<GaugeSet> known() {
        return ALL;
    }

    public static Optional<GaugeSet> named(String name) {
        return ALL.stream().filter(set -> set.name().equals(name)).findFirst();
    }

    /** The steps that a stack can be told apart by. */
    int finest() {
        return blocks.stream()
                .reduce(
                        0,
                        (one, other) -> BigInteger.valueOf(one)
                                .gcd(BigInteger.valueOf(other))
                                .intValueExact());
    }

    public double mm(int steps) {
        return BigDecimal.valueOf(step).multiply(BigDecimal.valueOf(steps)).doubleValue();
    }

    public double smallest() {
        return mm(blocks.get(0));
    }

    private static GaugeSet set(String name, double step, int coarse, String series) {
        List<Integer> blocks = new ArrayList<>();
        Arrays.stream(series.split(" ")).forEach(run -> add(run, blocks));
        return new GaugeSet(name, step, blocks.stream().sorted().toList(), coarse);
    }

    /** {@code first-last/by}, or a single block. */
    private static void add(String run, List<Integer> blocks) {
        int dash = run.indexOf('-');
        int first = Integer.parseInt(dash < 0 ? run : run.substring(0, dash));
        int last = dash < 0 ? first : Integer.parseInt(run.substring(dash + 1, run.indexOf('/')));
        int by = dash < 0 ? 1 : Integer.parseInt(run.substring(run.indexOf('/') + 1));
        for (int block = first; block <= last; block += by) {
            blocks.add(block);
        }
    }
}

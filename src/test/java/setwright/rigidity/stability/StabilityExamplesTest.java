package setwright.rigidity.stability;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.cutting.CheckRow;

/** Stability against published inputs, worked out by others and by other methods. */
class StabilityExamplesTest {
    private static final double BENCHMARK_SPEED = 5000 * Math.PI / 30;

    private static final Map<String, ToDoubleFunction<In>> RULES = Map.ofEntries(
            entry("always cutting", StabilityExamplesTest::alwaysCutting),
            entry("factor xx", in -> factors().xx()),
            entry("factor xy", in -> factors().xy()),
            entry("factor yx", in -> factors().yx()),
            entry("factor yy", in -> factors().yy()),
            entry("two-mode cutter at a speed", in -> twoModes(in).depthAt(in.of("n"))),
            entry("two-mode cutter near a peak", in -> peak(twoModes(in), in.of("n"))),
            entry("two-mode cutter is quiet", in -> twoModes(in).depthAt(in.of("n")) > in.of("ap") ? 1 : 0),
            entry("two-mode cutter everywhere", in -> twoModes(in).smallestDepth()),
            entry("two-mode cutter chatters at", in -> hertz(twoModes(in))),
            entry("stiffness of the benchmark", in -> Examples.benchmarkStiffness(in.of("m"))),
            entry("multiplier of the benchmark", in -> multiplier(in.of("w"))),
            entry("benchmark depth", StabilityExamplesTest::benchmarkDepth),
            entry("benchmark zero-order depth", in -> benchmark(in).depthAt(in.of("n"))),
            entry("benchmark zero-order peak", in -> peak(benchmark(in), in.of("n"))),
            entry(
                    "benchmark slot in closed form",
                    in -> OneDirection.slot(Examples.BENCHMARK.stiffness(), Examples.BENCHMARK.damping(), 2 * 200)),
            entry(
                    "benchmark slot everywhere",
                    in -> ZeroOrder.of(Examples.benchmark(1), Examples.BENCHMARK, Receptance.RIGID)
                            .smallestDepth()),
            entry("603 Hz cutter everywhere", in -> cutter603().smallestDepth()),
            entry("603 Hz cutter chatters at", in -> hertz(cutter603())),
            entry("603 Hz cutter near a peak", in -> peak(cutter603(), in.of("n"))),
            entry(
                    "603 Hz cutter stepped through",
                    in -> new QuietDepth(Examples.CUT_603, Examples.X_603, Examples.Y_666).at(in.of("n"), 20)));

    static List<CheckRow> rows() {
        return CheckRow.of(StabilityExamplesTest.class, "worked-examples.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void stability_is_as_the_source_says(CheckRow row) {
        var rule = Objects.requireNonNull(RULES.get(row.cell("rule")), row.cell("rule"));

        double worked = rule.applyAsDouble(new In(row.inputs()));

        assertThat(worked).isCloseTo(row.expected(), withinPercentage(100 * row.tolerance()));
    }

    private static double alwaysCutting(In in) {
        double cos = Math.cos(Math.toRadians(in.of("angle")));
        return OneDirection.alwaysCutting(in.of("k") / (cos * cos), in.of("zeta"), in.of("Kf"));
    }

    private static DirectionalFactors factors() {
        ToothCut cut = Examples.twoModeCut(true);
        return DirectionalFactors.of(cut.arc(), cut.radialRatio());
    }

    private static ZeroOrder twoModes(In in) {
        return Examples.twoModes(in.of("climb") > 0);
    }

    private static ZeroOrder cutter603() {
        return ZeroOrder.of(Examples.CUT_603, Examples.X_603, Examples.Y_666);
    }

    private static ZeroOrder benchmark(In in) {
        return ZeroOrder.of(
                Examples.benchmark(in.of("width")), Examples.BENCHMARK, Examples.benchmarkY(in.of("directions")));
    }

    private static double benchmarkDepth(In in) {
        var quiet = new QuietDepth(
                Examples.benchmark(in.of("width")), Examples.BENCHMARK, Examples.benchmarkY(in.of("directions")));
        return quiet.at(in.of("n"), 20);
    }

    private static double multiplier(double depth) {
        return new DelayedMap(
                        Examples.benchmark(1), Examples.BENCHMARK, Examples.BENCHMARK_RIGID, BENCHMARK_SPEED, depth)
                .growth();
    }

    private static double hertz(ZeroOrder border) {
        return border.chatterFrequency() / (2 * Math.PI);
    }

    /** The best depth within 0.6 % of a speed. */
    private static double peak(ZeroOrder border, double speed) {
        return border.lobes(0.994 * speed, 1.006 * speed, 121).stream()
                .mapToDouble(ZeroOrder.Lobe::depth)
                .max()
                .orElseThrow();
    }

    private record In(Map<String, Double> values) {
        double of(String name) {
            return Objects.requireNonNull(values.get(name), name);
        }
    }
}

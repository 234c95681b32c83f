package setwright.cutting;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The load of a cut: target under 0.2 ms, for the plan asks for it in every edit. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class MillingForceBench {
    @Param({"CLIMB", "SLOT"})
    public Direction direction = Direction.CLIMB;

    private MillingCut cut = cut(Direction.CLIMB);
    private EdgeForce law = KienzleForce.of(new Kienzle(1500, 0.22), cut.cutter());

    @Setup
    public void prepare() {
        cut = cut(direction);
        law = KienzleForce.of(new Kienzle(1500, 0.22), cut.cutter());
    }

    private static MillingCut cut(Direction direction) {
        var cutter = MillingCutter.square(12, 4, StrictMath.toRadians(30));
        double width = direction == Direction.SLOT ? 12 : 3;
        return MillingCut.of(cutter, direction, new MillingCut.Section(width, 10), 0.05);
    }

    @Benchmark
    public MillingLoad load() {
        return MillingForce.of(cut, law).load();
    }

    @Benchmark
    public CutForce mean() {
        return MillingForce.of(cut, law).mean();
    }
}

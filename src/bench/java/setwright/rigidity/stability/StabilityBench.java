package setwright.rigidity.stability;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import setwright.cutting.Direction;
import setwright.cutting.Engagement;
import setwright.rigidity.FlutedTool;
import setwright.rigidity.MountedTool;
import setwright.rigidity.Springs;

/** Lobes and ringing: a zero-order diagram of 200 speeds has a target under 200 ms, off the event thread. */
@State(Scope.Benchmark)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class StabilityBench {
    private static final double SPEED = 3000 * Math.PI / 30;

    private final Mode x = Mode.ofHertz(603, 0.039, 5590);
    private final Mode y = Mode.ofHertz(666, 0.035, 5715);
    private final ToothCut half = cut(0.5);
    private final ToothCut narrow = cut(0.05);
    private final MountedTool tool =
            new MountedTool(FlutedTool.endMill(12, 26, 12).beam(50, 210000), Springs.ofMachine(10000));

    private static ToothCut cut(double width) {
        return new ToothCut(3, Engagement.of(Direction.CONVENTIONAL, width, 1), 1800, 0.3);
    }

    @Benchmark
    public List<ZeroOrder.Lobe> lobesOf200Speeds() {
        return ZeroOrder.of(half, x, y).lobes(100, 2000, 200);
    }

    @Benchmark
    public double depthAtOneSpeed() {
        return ZeroOrder.of(half, x, y).depthAt(SPEED);
    }

    @Benchmark
    public double growthAtOneSpeed() {
        return new DelayedMap(half, x, y, SPEED, 0.5).growth();
    }

    @Benchmark
    public double quietDepthOfNarrowCut() {
        return new QuietDepth(narrow, x, y).at(SPEED, 10);
    }

    @Benchmark
    public Mode firstMode() {
        return FirstMode.of(tool, 8.1e-6, 0.5);
    }
}

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

    /** With the run-out of the holder, as the plan asks it beside the load. */
    @Benchmark
    public TurnPoint largestRunningOut() {
        return MillingForce.of(ShapedCut.of(cut), law, UnevenTeeth.worstRunningOut(4, 0.01, 0.05))
                .largest();
    }

    @Benchmark
    public MillingLoad ball() {
        var section = new MillingCut.Section(12, 6);
        var teeth = new ShapedCut.Teeth(4, 0.5);
        var shape = new EdgeShape.Rounded(6, 6);
        return MillingForce.of(ShapedCut.of(shape, teeth, Direction.SLOT, section, ShapedCut.Side.UPRIGHT, 0.05), law)
                .load();
    }

    /** For comparison: the same turn added up in 360 steps of 20 slices of every tooth. */
    @Benchmark
    public double plainQuadrature() {
        double peak = 0;
        for (int step = 0; step < 360; step++) {
            peak = Math.max(peak, plainTorque(2 * Math.PI * step / 360));
        }
        return peak;
    }

    private double plainTorque(double turned) {
        double torque = 0;
        for (int slice = 0; slice < 20 * cut.cutter().teeth(); slice++) {
            double lag = cut.cutter().lag(cut.axialDepth() * (slice % 20 + 0.5) / 20);
            double at = turned + slice / 20 * cut.cutter().pitch() - lag;
            double angle = at - 2 * Math.PI * Math.floor(at / (2 * Math.PI));
            if (angle >= cut.engagement().start() && angle < cut.engagement().exit()) {
                torque += law.at(cut.chip(angle)).tangential();
            }
        }
        return torque * cut.axialDepth() / 20 * cut.cutter().radius();
    }

    @Benchmark
    public CutForce mean() {
        return MillingForce.of(cut, law).mean();
    }
}

package setwright.geometry;

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

/**
 * Exact clearance beside dense sampling at 1 mm, at least 50 times faster; and the time of all operations, each of which
 * may take less than half as long again among 1,000 as among 10.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class ManyOperationsBench {
    private final ManyOperations twentyFour = new ManyOperations(24);

    /** How many operations there are. */
    @State(Scope.Benchmark)
    public static class Count {
        @Param({"10", "100", "1000"})
        public int operations;

        ManyOperations set = new ManyOperations(1);

        @Setup
        public void draw() {
            set = new ManyOperations(operations);
        }
    }

    @Benchmark
    public double exact_of_24() {
        return twentyFour.exact();
    }

    @Benchmark
    public double sampled_of_24() {
        return DenseSampling.least(twentyFour);
    }

    @Benchmark
    public double exact_of_many(Count count) {
        return count.set.exact();
    }
}

package setwright.holding.balance;

import java.util.ArrayList;
import java.util.List;
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
import setwright.Rounds;

/** Balances of parts in vises, a new one each time: at most 1 ms for one load, 5 ms for twelve, 50 ms for a whole operation. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class FrictionBalanceBench {
    private static final int CASES = 200;

    /** Asked at once: one load, twelve scattered, the turn of a cutter at three places, 20 stations by 36 directions. */
    @Param({"1", "12", "turn", "operation"})
    public String loads;

    private final List<Grip> grips = new ArrayList<>();
    private final List<List<Load>> cuts = new ArrayList<>();
    private int next;

    @Setup
    public void draw() {
        Rounds.each(5, CASES, (random, round) -> {
            grips.add(RandomGrips.vise(random));
            cuts.add(
                    switch (loads) {
                        case "turn" -> RandomGrips.turn(random, 16);
                        case "operation" -> RandomGrips.operation(random);
                        default -> RandomGrips.cuts(random, Integer.parseInt(loads));
                    });
        });
    }

    @Benchmark
    public Answer answer() {
        next = (next + 1) % CASES;
        return new FrictionBalance(grips.get(next)).answer(cuts.get(next));
    }
}

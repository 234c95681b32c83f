package setwright.caution.choice;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import setwright.caution.Findings;
import setwright.caution.Judge;
import setwright.plan.Plan;
import setwright.plan.Planner;

/** The whole choice: every arrangement of the shop against all operations of a set-up of twelve. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(1)
public class ChoiceBench {
    private final Plan plan = Planner.plan(Toolroom.twelveOperations(), Toolroom.SHOP);
    private final Findings findings = Judge.judge(plan);

    @Benchmark
    public List<Ranked> holdings() {
        return HoldingRanking.of(plan, findings, "s1", Toolroom.SHOP, Trying.TO_THE_END);
    }

    @Benchmark
    public List<Ranked> holdersOfOneCutter() {
        return HolderRanking.of(plan, findings, "slot1-slot", Toolroom.SHOP, Trying.TO_THE_END);
    }
}

package setwright;

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
import setwright.caution.SmallJobs;
import setwright.caution.SmallShop;
import setwright.job.Job;
import setwright.plan.Plan;
import setwright.plan.Planner;
import setwright.shop.Shop;

/** The first stage after an edit: the bearing block planned and judged as a whole. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class PlanBench {
    private final Job job = SmallJobs.bearingBlock();
    private final Shop shop = SmallShop.shop();
    private final Plan plan = Planner.plan(job, shop);

    @Benchmark
    public Findings planAndJudge() {
        return Judge.judge(Planner.plan(job, shop));
    }

    @Benchmark
    public Findings judgeAlone() {
        return Judge.judge(plan);
    }
}

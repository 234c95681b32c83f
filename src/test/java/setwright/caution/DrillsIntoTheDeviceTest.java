package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.job.Job;
import setwright.job.SetUp;
import setwright.plan.BearingBlock;
import setwright.plan.Planner;
import setwright.shop.Shop;

class DrillsIntoTheDeviceTest {
    private static final Shop SHOP = BearingBlock.shop();

    @Test
    void holes_through_a_disc_that_lies_bare_on_a_rotary_table_stop_the_plan() {
        Job circle = BearingBlock.job(Path.of("demo-jobs/setting-circle.setwright.json"), SHOP);
        List<SetUp> setUps = circle.plan().setUps();
        SetUp bare = setUps.get(0).withHolding(setUps.get(1).holding());
        Job job = circle.withPlan(circle.plan().withSetUps(List.of(bare)));

        Findings findings = Judge.judge(Planner.plan(job, SHOP));

        assertThat(findings.open(Severity.STOP))
                .filteredOn(caution -> caution.slug().equals("drill-meets-vise-bed"))
                .singleElement()
                .satisfies(caution -> assertThat(caution.message()).contains("rotary table", "packing under the part"));
    }
}

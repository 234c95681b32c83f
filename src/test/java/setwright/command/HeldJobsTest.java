package setwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import setwright.file.JobFile;
import setwright.geometry.Side;
import setwright.job.Blank;
import setwright.job.DeviceHolding;
import setwright.job.Feature;
import setwright.job.Holding;
import setwright.job.Job;
import setwright.job.SetUp;
import setwright.job.TableHolding;
import setwright.job.UndecidedHolding;
import setwright.job.ViseHolding;
import setwright.plan.HoldingJobs;
import setwright.plan.HoldingShop;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;
import setwright.sheet.SetUpSheet;
import setwright.sheet.TextSheet;

/** A part held in whatever way is planned, judged and written on a sheet, the same after saving and reading. */
class HeldJobsTest {
    @TestFactory
    Stream<DynamicTest> a_part_is_planned_judged_and_written_up_however_it_is_held() {
        List<Holding> holdings =
                new ArrayList<>(List.of(new UndecidedHolding(), ViseHolding.pencilled(), TableHolding.pencilled()));
        for (DeviceHolding.On on : DeviceHolding.On.values()) {
            holdings.add(DeviceHolding.pencilled(on));
        }
        Blank block = HoldingJobs.block("100 mm", "60 mm", "25 mm");
        Blank bar = HoldingJobs.bar("25 mm", "120 mm");
        Feature top = HoldingJobs.holes("h1", Side.TOP, "8 mm", null, 1, "1 mm", 1, "1 mm");
        Feature side = HoldingJobs.holes("h1", Side.FRONT, "8 mm", null, 1, "1 mm", 1, "1 mm");
        return holdings.stream()
                .flatMap(holding -> Stream.of(
                        test(block, top, HoldingJobs.setUp(Side.TOP, 0, holding)),
                        test(bar, side, HoldingJobs.setUp(Side.FRONT, 1, holding))));
    }

    private static DynamicTest test(Blank blank, Feature feature, SetUp setUp) {
        Job job = HoldingJobs.job(blank, List.of(feature), List.of(setUp));
        String name = blank.kind() + " " + setUp.holding();
        return DynamicTest.dynamicTest(name, () -> assertThat(sheet(job)).contains("Bearing block"));
    }

    private static String sheet(Job job) {
        JobCheck check =
                JobCheck.of("job", JobFile.read(JobFile.text(job, null), HoldingShop.shop()), HoldingShop.shop());
        assertThat(check).isInstanceOf(JobCheck.Worked.class);
        JobCheck.Worked worked = (JobCheck.Worked) check;
        return TextSheet.text(SetUpSheet.of(worked.plan(), SheetFindings.of(worked), new Printing(UnitSystem.METRIC)));
    }
}

package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.job.DrawnOperation;
import setwright.plan.outcome.ComesOut;
import setwright.plan.outcome.Loose;
import setwright.shop.Shop;

/** Every feature of every demonstration job comes out as drawn: the planned flaws are others. */
class ComesOutRightTest {
    private static final Shop SHOP = BearingBlock.shop();

    static List<Path> jobs() throws IOException {
        return DemonstrationJobsTest.jobs();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void nothing_is_left_standing_cut_too_far_or_loose(Path file) {
        Plan plan = Planner.plan(BearingBlock.job(file, SHOP), SHOP);
        assertThat(ComesOut.of(plan.drawnUp(), plan.rows(), plan.part())).isEmpty();
        assertThat(Loose.of(plan.drawnUp(), plan.rows(), plan.part())).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void every_operation_has_a_way_past_the_work(Path file) {
        Plan plan = Planner.plan(BearingBlock.job(file, SHOP), SHOP);
        assertThat(plan.drawnUp().setUps().stream().flatMap(setUp -> setUp.operations().stream()))
                .extracting(DrawnOperation::id)
                .allMatch(id ->
                        plan.part().operation(id).map(stage -> stage.runs() > 0).orElse(false));
    }
}

package setwright.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.file.JobFile;
import setwright.file.JobRead;
import setwright.job.Job;
import setwright.shop.Shop;

/** Every demonstration job opens, is planned, saved and reopened, and gives the same figures. */
class DemonstrationJobsTest {
    private static final Shop SHOP = BearingBlock.shop();

    static List<Path> jobs() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("demo-jobs"))) {
            return files.filter(file -> file.toString().endsWith(".setwright.json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void a_saved_and_reopened_job_gives_the_same_plan(Path file) {
        Job job = BearingBlock.job(file, SHOP);
        Plan plan = Planner.plan(job, SHOP);
        JobRead again = JobFile.read(JobFile.text(job, plan.drawnUp()), SHOP);
        assertThat(again).isInstanceOfSatisfying(JobRead.Opened.class, opened -> {
            assertThat(opened.job()).isEqualTo(job);
            assertThat(Planner.plan(opened.job(), SHOP).drawnUp()).isEqualTo(plan.drawnUp());
        });
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void planning_twice_gives_the_same_figures(Path file) {
        Job job = BearingBlock.job(file, SHOP);
        Plan one = Planner.plan(job, SHOP);
        Plan other = Planner.plan(job, SHOP);
        assertThat(one.cut()).isEqualTo(other.cut());
        assertThat(one.hold()).isEqualTo(other.hold());
        assertThat(one.time()).isEqualTo(other.time());
    }
}

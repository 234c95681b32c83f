package setwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static setwright.file.SampleShop.mm;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.file.json.Problem;
import setwright.job.Block;
import setwright.job.JobPlan;
import setwright.job.MachineAsItStands;
import setwright.job.Size;

class MigrationTest {
    @Test
    void a_job_of_version_0_opens_with_least_and_greatest_sizes_and_the_machine_as_it_stands() throws IOException {
        JobPlan plan = JobFileTest.opened(versionZero(), Samples.shop()).job().plan();

        Block block = (Block) plan.blank();
        assertThat(block.length()).isEqualTo(new Size(mm("82 mm"), mm("82 mm - 0 mm"), mm("82 mm + 1 mm")));
        assertThat(block.length().leastMm()).isEqualTo(82);
        assertThat(block.length().greatestMm()).isEqualTo(83);
        assertThat(block.depth().leastMm()).isEqualTo(50.403125);
        assertThat(block.depth().greatestMm()).isEqualTo(51.59375);
        assertThat(plan.machine()).isEqualTo(new MachineAsItStands("knee-mill", List.of(), null));
    }

    @Test
    void it_is_saved_in_the_newest_version_and_means_the_same() throws IOException {
        var job = JobFileTest.opened(versionZero(), Samples.shop()).job();

        String saved = JobFile.text(job, null);

        assertThat(saved).contains("\"version\": 1");
        assertThat(JobFileTest.opened(saved, Samples.shop()).job()).isEqualTo(job);
    }

    @Test
    void problems_in_an_old_file_are_told_where_they_stand_in_it() throws IOException {
        String text = versionZero().replace("\"plus\": \"1/32 in\"", "\"plus\": \"1/32 kg\"");

        assertThat(((JobRead.Refused) JobFile.read(text, Samples.shop())).problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.path()).isEqualTo("plan/blank/depth/greatest");
                    assertThat(problem.line()).isEqualTo(12);
                    assertThat(problem.column()).isEqualTo(41);
                    assertThat(problem.message()).contains("2 in + 1/32 kg");
                });
    }

    @Test
    void an_old_file_of_the_wrong_shape_is_told_as_such() {
        String text = "{\"format\": \"setwright job\", \"version\": 0, \"plan\": [{\"size\": 1, \"plus\": {}}]}";

        assertThat(((JobRead.Refused) JobFile.read(text, Samples.shop())).problems())
                .extracting(Problem::path)
                .containsExactly("plan");
    }

    private static String versionZero() throws IOException {
        try (InputStream in = MigrationTest.class.getResourceAsStream("job-version-0.setwright.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

package setwright.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.plan.BearingBlock;
import setwright.plan.Planner;
import setwright.shop.Shop;

class DemonstrationsTest {
    private static final Shop SHOP = BearingBlock.shop();

    static List<Path> demonstrations() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-jobs"))) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith("planned-wrongly"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("demonstrations")
    void a_demonstration_that_is_not_planned_wrongly_can_be_run(Path job) {
        Findings findings = Judge.judge(Planner.plan(BearingBlock.job(job, SHOP), SHOP));
        assertThat(findings.open(Severity.STOP)).isEmpty();
    }
}

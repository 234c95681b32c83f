package setwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import setwright.command.Terminal;

class SetwrightTest {
    @Test
    void without_a_display_the_first_command_prints_the_demonstration_job_and_how_to_open_the_window() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                Path.of(""));
        Launcher launcher = new Launcher(job -> {
            throw new AssertionError("The tests of the core run without a display.");
        });
        assertThat(Setwright.run(new String[0], launcher, terminal)).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("Bearing block", "opens the window", "mvn -q compile exec:java");
    }
}

package setwright.window.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsFileTest {
    @TempDir
    Path folder;

    @Test
    void what_was_set_is_there_the_next_time() {
        Settings settings = new Settings(folder.resolve("shop"), folder, "Zoë", "NIGHT");

        assertThat(new SettingsFile(folder.resolve("data")).write(settings)).isTrue();

        assertThat(new SettingsFile(folder.resolve("data")).read(folder)).isEqualTo(settings);
    }

    @Test
    void without_a_file_nothing_is_set() {
        assertThat(new SettingsFile(folder).read(folder)).isEqualTo(new Settings(null, folder, "", ""));
    }

    @Test
    void a_file_that_cannot_be_read_is_as_good_as_none() throws Exception {
        Files.writeString(folder.resolve("settings.properties"), "person=\\u12", StandardCharsets.UTF_8);

        assertThat(new SettingsFile(folder).read(folder)).isEqualTo(new Settings(null, folder, "", ""));
    }

    @Test
    void where_nothing_can_be_written_the_window_goes_on_without() throws Exception {
        Path file =
                Files.writeString(folder.resolve("data"), "a file where the folder should be", StandardCharsets.UTF_8);

        assertThat(new SettingsFile(file).write(new Settings(null, folder, "Ada", "PAPER")))
                .isFalse();
    }
}

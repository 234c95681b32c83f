package setwright.window.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsFileTest {
    @TempDir
    Path folder;

    @Test
    void what_was_set_is_there_the_next_time() {
        Settings settings = new Settings(
                        folder.resolve("shop"),
                        folder,
                        "Zoë",
                        "NIGHT",
                        false,
                        List.of(folder.resolve("b.json"), folder.resolve("a.json")))
                .withQuick(QuickFields.USUAL.with(QuickField.CUT, "5 x 1/4"))
                .withFigures(List.of("tap-drill", "index-plain"));

        assertThat(new SettingsFile(folder.resolve("data")).write(settings)).isTrue();

        assertThat(new SettingsFile(folder.resolve("data")).read(folder)).isEqualTo(settings);
    }

    @Test
    void the_nine_jobs_that_were_open_last_are_kept_the_last_one_first() {
        Settings settings = Settings.first(folder);
        for (int i = 1; i <= 11; i++) {
            settings = settings.withRecent(folder.resolve(i + ".json"));
        }
        settings = settings.withRecent(folder.resolve("7.json"));

        assertThat(settings.recent()).hasSize(9).startsWith(folder.resolve("7.json"), folder.resolve("11.json"));
        assertThat(settings.recent()).doesNotHaveDuplicates();
    }

    @Test
    void without_a_file_nothing_is_set() {
        assertThat(new SettingsFile(folder).read(folder)).isEqualTo(Settings.first(folder));
    }

    @Test
    void a_file_that_cannot_be_read_is_as_good_as_none() throws Exception {
        Files.writeString(folder.resolve("settings.properties"), "person=\\u12", StandardCharsets.UTF_8);

        assertThat(new SettingsFile(folder).read(folder)).isEqualTo(Settings.first(folder));
    }

    @Test
    void where_nothing_can_be_written_the_window_goes_on_without() throws Exception {
        Path file =
                Files.writeString(folder.resolve("data"), "a file where the folder should be", StandardCharsets.UTF_8);

        assertThat(new SettingsFile(file).write(Settings.first(folder).withPerson("Ada")))
                .isFalse();
    }
}

package setwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JMenu;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.window.state.Settings;

@WindowTest
class RecentTest {
    @TempDir
    Path folder;

    @Test
    void a_recent_job_opens_by_its_key_and_one_that_is_gone_is_grey() throws Exception {
        Path there = folder.resolve("there.setwright.json");
        Files.writeString(
                there,
                Files.readString(Path.of("demo-jobs/everyday/clamp-pad.setwright.json"), StandardCharsets.UTF_8),
                StandardCharsets.UTF_8);
        Path gone = folder.resolve("gone.setwright.json");
        OnScreen window =
                new OnScreen(null, Settings.first(folder).withRecent(gone).withRecent(there), kept -> {});

        JMenu file = window.workbench.frame().getJMenuBar().getMenu(0);
        window.run(() -> file.setSelected(true));
        window.until(
                "the one that is gone is grey",
                () -> !window.menu("file.recent.2").isEnabled());
        assertThat(window.onEventThread(() -> window.menu("file.recent.1").isEnabled()))
                .isTrue();
        assertThat(window.menu("file.recent.1").getText()).startsWith("1  there.setwright.json");
        window.run(() -> file.setSelected(false));

        window.chord(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_1);
        window.until("it is open", () -> window.screen().title().contains("there.setwright.json"));
    }

    @Test
    void each_look_is_put_on_by_its_key_and_kept() throws Exception {
        OnScreen window = new OnScreen(null, folder);
        window.keys(KeyEvent.VK_F11);
        window.until(
                "it is night", () -> window.workbench.desk().settings().look().equals("NIGHT"));
        window.keys(KeyEvent.VK_F11);
        window.until(
                "it is as printed",
                () -> window.workbench.desk().settings().look().equals("PRINT"));
        window.keys(KeyEvent.VK_F11);
        window.until(
                "it is paper", () -> window.workbench.desk().settings().look().equals("PAPER"));
    }
}

package setwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench figures, found and answered from the keyboard. */
@WindowTest
class BenchFiguresTest {
    @TempDir
    Path folder;

    @Test
    void a_tap_drill_is_found_and_answered_with_ten_keys_and_escape_leads_back() throws Exception {
        OnScreen window = new OnScreen(null, folder);
        CountedKeys keys = new CountedKeys();

        keys.key(KeyEvent.VK_F5);
        window.until(
                "the search has the keyboard",
                () -> window.found("figures.search").isFocusOwner());
        keys.type("tap").enter();
        window.until(
                "tap-drill is asked", () -> window.screen().bench().figure().equals("tap-drill"));
        keys.type("M8");
        window.until("the drill is said", () -> window.find("figures.answer.drill") != null);
        assertThat(window.onEventThread(() -> ((JTextArea) window.found("figures.answer.drill")).getText()))
                .isEqualTo("6.8 mm");
        assertThat(keys.count()).isLessThanOrEqualTo(10);

        keys.key(KeyEvent.VK_ESCAPE);
        window.until("the job is back", () -> !window.screen().bench().open());
    }
}

package setwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.window.state.Settings;

/** The first five minutes, by the keys that its lines name. */
@WindowTest
class FirstMinutesTest {
    @TempDir
    Path folder;

    private OnScreen window;

    @Test
    void one_line_at_a_time_leads_from_the_parallels_to_the_persons_own_block() throws Exception {
        window = new OnScreen(null, folder);
        assertThat(window.onEventThread(() -> window.screen().next().sentence()))
                .matches(".* goes [0-9.]+ mm into the .* parallel.*");
        assertThat(window.onEventThread(() -> window.screen().next().hint())).startsWith("F4 shows what would mend it");

        window.keys(KeyEvent.VK_F4);
        window.until("remedies are offered", () -> window.find("remedy.1") != null);
        window.keys(KeyEvent.VK_1);
        said("Mended. Ctrl+Z");

        window.control(KeyEvent.VK_Z);
        said("Nudge a stick-out: F2");

        unfoldTheDrill();
        window.keys(KeyEvent.VK_TAB, KeyEvent.VK_TAB, KeyEvent.VK_TAB);
        window.until(
                "the stick-out has the keyboard",
                () -> window.found("field.stickOut").isFocusOwner());
        String quill = window.onEventThread(this::quill);
        window.keys(KeyEvent.VK_PAGE_UP, KeyEvent.VK_PAGE_UP, KeyEvent.VK_PAGE_UP);
        said("Open a figure: Tab");
        window.until("the quill follows", () -> !quill().equals(quill));

        for (int i = 0; i < 20 && !window.focused().startsWith("figure."); i++) {
            window.keys(KeyEvent.VK_TAB);
        }
        window.keys(KeyEvent.VK_ENTER);
        said("Now your own block: Ctrl+N");
    }

    @Test
    void escape_silences_the_lines_for_good_and_help_brings_them_back() throws Exception {
        List<Settings> kept = new ArrayList<>();
        window = new OnScreen(null, Settings.first(folder), kept::add);
        window.keys(KeyEvent.VK_F4);
        window.until("remedies are offered", () -> window.find("remedy.1") != null);
        window.keys(KeyEvent.VK_1);
        said("Mended. Ctrl+Z");

        window.keys(KeyEvent.VK_F2);
        window.keys(KeyEvent.VK_ESCAPE);
        said("No caution is open.");
        assertThat(window.onEventThread(() -> window.workbench.desk().settings().lessons()))
                .isFalse();

        window.run(() -> window.workbench.desk().files().firstSteps());
        window.until(
                "the practice copy is fresh",
                () -> window.screen().next().sentence().contains(" goes ")
                        && window.workbench.desk().settings().lessons());
        assertThat(window.menu("help.firstSteps").getText()).isEqualTo("The first five minutes");

        window.run(() -> window.workbench.frame().dispose());
        window.workbench.untilClosed();
        assertThat(kept)
                .singleElement()
                .satisfies(settings -> assertThat(settings.lessons()).isTrue());
    }

    private String quill() {
        return window.screen().card().unfolded().figures().stream()
                .filter(figure -> figure.key().equals("quill"))
                .findFirst()
                .orElseThrow()
                .printed();
    }

    private void unfoldTheDrill() {
        String drill = window.line("Drill 6.8").key();
        window.keys(KeyEvent.VK_F2);
        window.until(
                "a line has the keyboard",
                () -> window.all().stream()
                        .anyMatch(each -> each.isFocusOwner() && each.getName().startsWith("line.")));
        for (int i = 0; i < 10 && !window.focused().equals("line." + drill); i++) {
            window.keys(KeyEvent.VK_DOWN);
        }
        for (int i = 0; i < 10 && !window.focused().equals("line." + drill); i++) {
            window.keys(KeyEvent.VK_UP);
        }
        if (!window.onEventThread(() -> window.screen().at().line()).equals(drill)) {
            window.keys(KeyEvent.VK_ENTER);
        }
        window.until("it is unfolded", () -> window.find("field.stickOut") != null);
    }

    private void said(String beginning) {
        window.until(
                "the foot says " + beginning,
                () -> window.screen().next().sentence().startsWith(beginning));
    }
}

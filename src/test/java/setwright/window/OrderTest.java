package setwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.window.model.RouteCard;

/** Set-ups on the route and operations on the card are put in order by keys. */
@WindowTest
class OrderTest {
    @TempDir
    Path folder;

    private OnScreen window;

    @BeforeEach
    void open() throws Exception {
        window = new OnScreen(null, folder);
    }

    @Test
    void set_ups_are_added_duplicated_moved_and_deleted_by_keys() {
        window.chord(KeyEvent.VK_SHIFT, KeyEvent.VK_INSERT);
        route("s1", "s2");
        chosen("s2");
        window.keys(KeyEvent.VK_F6);
        window.until(
                "the new card has the keyboard", () -> window.found("route.s2").isFocusOwner());

        window.chord(KeyEvent.VK_CONTROL, KeyEvent.VK_LEFT);
        route("s2", "s1");
        window.chord(KeyEvent.VK_CONTROL, KeyEvent.VK_RIGHT);
        route("s1", "s2");
        window.chord(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_D);
        route("s1", "s2", "s3");
        window.keys(KeyEvent.VK_DELETE);
        route("s1", "s2");
        window.chord(KeyEvent.VK_SHIFT, KeyEvent.VK_DELETE);
        route("s1");
    }

    @Test
    void left_and_right_go_from_set_up_to_set_up() {
        window.chord(KeyEvent.VK_SHIFT, KeyEvent.VK_INSERT);
        route("s1", "s2");
        window.focus("route.s2");
        window.keys(KeyEvent.VK_LEFT);
        window.until("the first is chosen", () -> window.screen().at().setUp().equals("s1"));
        window.keys(KeyEvent.VK_RIGHT);
        window.until("the second is chosen", () -> window.screen().at().setUp().equals("s2"));
    }

    @Test
    void operations_are_duplicated_moved_and_deleted_by_keys() {
        String drill = window.line("Drill 6.8").key();
        window.focus("line." + drill);
        window.control(KeyEvent.VK_D);
        window.until("there are two", () -> lines().contains(drill + "-2"));
        window.until("it is unfolded", () -> window.screen().at().line().equals(drill + "-2"));

        window.focus("line." + drill + "-2");
        int at = window.onEventThread(() -> lines().indexOf(drill + "-2"));
        window.chord(KeyEvent.VK_CONTROL, KeyEvent.VK_UP);
        window.until("it moved up", () -> lines().indexOf(drill + "-2") == at - 1);
        window.until(
                "it keeps the keyboard",
                () -> window.found("line." + drill + "-2").isFocusOwner());
        window.chord(KeyEvent.VK_CONTROL, KeyEvent.VK_DOWN);
        window.until("it moved down", () -> lines().indexOf(drill + "-2") == at);

        window.keys(KeyEvent.VK_DELETE);
        window.until("it is gone", () -> !lines().contains(drill + "-2"));
        window.until(
                "a line has the keyboard",
                () -> window.all().stream()
                        .anyMatch(each -> each.isFocusOwner() && each.getName().startsWith("line.")));
    }

    @Test
    void the_kind_of_a_new_operation_is_chosen_by_keys() {
        String drill = window.line("Drill 6.8").key();
        int before = window.onEventThread(() -> lines().size());
        window.focus("line." + drill);
        window.keys(KeyEvent.VK_INSERT);
        window.until("kinds are offered", () -> window.found("line." + drill).isShowing() && offered() > 2);
        window.keys(KeyEvent.VK_DOWN, KeyEvent.VK_DOWN, KeyEvent.VK_ENTER);
        window.until("one more stands there", () -> lines().size() == before + 1);

        assertThat(window.onEventThread(() -> window.screen().undo())).isEqualTo("Spot: 4x M8 thru added");
    }

    private static int offered() {
        return javax.swing.MenuSelectionManager.defaultManager().getSelectedPath().length == 0
                ? 0
                : ((javax.swing.JPopupMenu) javax.swing.MenuSelectionManager.defaultManager()
                                .getSelectedPath()[0])
                        .getComponentCount();
    }

    private void route(String... setUps) {
        window.until(
                "the route is " + List.of(setUps),
                () -> window.screen().route().stream()
                        .map(RouteCard::setUp)
                        .toList()
                        .equals(List.of(setUps)));
    }

    private void chosen(String setUp) {
        window.until(setUp + " is chosen", () -> window.screen().at().setUp().equals(setUp));
    }

    private List<String> lines() {
        return window.screen().card().lines().stream()
                .map(setwright.window.model.Line::key)
                .toList();
    }
}

package setwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Point;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.util.Arrays;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JTextField;

/** Clicks on what can be seen. */
final class Mouse {
    private static final int LEAST = 28;

    private final OnScreen window;
    private final Robot robot;

    Mouse(OnScreen window) {
        this.window = window;
        try {
            robot = new Robot();
        } catch (AWTException why) {
            throw new IllegalStateException(why);
        }
        robot.setAutoWaitForIdle(true);
    }

    void click(String name) {
        window.until(name + " is there", () -> window.find(name) != null);
        click(window.onEventThread(() -> window.found(name)));
    }

    /** Opens a menu of the menu bar, and chooses an item of it. */
    void menu(String text, String item) {
        JMenu menu = window.onEventThread(
                () -> Arrays.stream(window.workbench.frame().getJMenuBar().getComponents())
                        .filter(JMenu.class::isInstance)
                        .map(JMenu.class::cast)
                        .filter(one -> one.getText().equals(text))
                        .findFirst()
                        .orElseThrow());
        click(menu);
        window.until(text + " is open", menu::isPopupMenuVisible);
        JMenuItem wanted = window.onEventThread(() -> Arrays.stream(menu.getMenuComponents())
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast)
                .filter(one -> item.equals(one.getName()))
                .findFirst()
                .orElseThrow());
        assertThat(wanted.getHeight()).as(item).isGreaterThanOrEqualTo(LEAST);
        click(wanted);
    }

    private void click(Component target) {
        Point at = window.onEventThread(() -> {
            Point corner = target.getLocationOnScreen();
            return new Point(corner.x + target.getWidth() / 2, corner.y + target.getHeight() / 2);
        });
        robot.mouseMove(at.x, at.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    }

    /** Every field, box and button that one clicks on; not what stands within a box or a scroll bar. */
    static void assertHighEnough(Component component) {
        boolean target = component instanceof AbstractButton
                || component instanceof JTextField
                || component instanceof JComboBox<?>;
        boolean inside = component.getParent() instanceof JComboBox<?>
                || component.getParent() instanceof javax.swing.JScrollBar
                || component instanceof JMenu;
        if (target && !inside && component.isShowing()) {
            assertThat(component.getHeight()).as(component.getName()).isGreaterThanOrEqualTo(LEAST);
        }
    }
}

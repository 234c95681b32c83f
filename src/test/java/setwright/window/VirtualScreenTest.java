package setwright.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;

@WindowTest
class VirtualScreenTest {
    private final CountDownLatch pressed = new CountDownLatch(1);
    private final JButton button = new JButton("Press");

    @Test
    void a_button_is_pressed_with_the_mouse() throws Exception {
        show(button);
        var middle = new AtomicReference<Point>();
        EventQueue.invokeAndWait(() -> middle.set(button.getLocationOnScreen()));

        var robot = new Robot();
        robot.mouseMove(middle.get().x + button.getWidth() / 2, middle.get().y + button.getHeight() / 2);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);

        assertThat(pressed.await(10, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void a_key_reaches_the_field_that_has_the_focus() throws Exception {
        var field = new JTextField(10);
        field.addActionListener(event -> pressed.countDown());
        show(field);
        EventQueue.invokeAndWait(field::requestFocusInWindow);

        var robot = new Robot();
        robot.waitForIdle();
        robot.keyPress(KeyEvent.VK_ENTER);
        robot.keyRelease(KeyEvent.VK_ENTER);

        assertThat(pressed.await(10, TimeUnit.SECONDS)).isTrue();
    }

    private void show(javax.swing.JComponent content) throws Exception {
        EventQueue.invokeAndWait(() -> {
            button.addActionListener(event -> pressed.countDown());
            var frame = new JFrame("Virtual screen");
            frame.add(content);
            frame.setSize(300, 200);
            frame.setVisible(true);
        });
        new Robot().waitForIdle();
    }
}

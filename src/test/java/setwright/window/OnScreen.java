package setwright.window;

import static org.assertj.core.api.Assertions.fail;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import org.jspecify.annotations.Nullable;
import setwright.window.model.Screen;
import setwright.window.state.Settings;

/** The real window on the screen of the tests, worked by keys, and looked at on the event thread. */
final class OnScreen {
    private static final long LONGEST_S = 60;

    final Workbench workbench;
    private final Robot robot;

    OnScreen(@Nullable Path job, Path folder) throws AWTException {
        this(job, Settings.first(folder), kept -> {});
    }

    /** @param keep is handed the settings when the window closes */
    OnScreen(@Nullable Path job, Settings settings, Consumer<Settings> keep) throws AWTException {
        robot = new Robot();
        robot.setAutoWaitForIdle(true);
        workbench = Workbench.open(job, settings, keep);
        until(
                "the first plan stands",
                () -> !screen().card().lines().isEmpty() && !workbench.desk().busy());
    }

    Screen screen() {
        return workbench.desk().screen();
    }

    /** Waits until this holds on the event thread. */
    void until(String what, BooleanSupplier holds) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_S);
        while (!onEventThread(holds::getAsBoolean)) {
            if (System.nanoTime() > end) {
                fail("Waited in vain until " + what + "; the screen is " + onEventThread(this::screen));
            }
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(10));
        }
    }

    <T> T onEventThread(Callable<T> asked) {
        AtomicReference<T> answer = new AtomicReference<>();
        AtomicReference<Exception> failure = new AtomicReference<>();
        try {
            EventQueue.invokeAndWait(() -> {
                try {
                    answer.set(asked.call());
                } catch (Exception why) {
                    failure.set(why);
                }
            });
        } catch (InterruptedException | java.lang.reflect.InvocationTargetException why) {
            throw new IllegalStateException(why);
        }
        if (failure.get() != null) {
            throw new IllegalStateException(failure.get());
        }
        return answer.get();
    }

    void run(Runnable done) {
        onEventThread(() -> {
            done.run();
            return true;
        });
    }

    void keys(int... codes) {
        for (int code : codes) {
            robot.keyPress(code);
            robot.keyRelease(code);
        }
    }

    void control(int code) {
        chord(KeyEvent.VK_CONTROL, code);
    }

    /** The last key while those before it are held. */
    void chord(int... codes) {
        for (int code : codes) {
            robot.keyPress(code);
        }
        for (int i = codes.length - 1; i >= 0; i--) {
            robot.keyRelease(codes[i]);
        }
    }

    void digits(String text) {
        text.chars().forEach(digit -> keys(digit == '.' ? KeyEvent.VK_PERIOD : KeyEvent.VK_0 + digit - '0'));
    }

    /** Brings the keyboard to a named component, as a click would. */
    void focus(String name) {
        until(name + " is there", () -> find(name) != null);
        onEventThread(() -> found(name).requestFocusInWindow());
        until(name + " has the keyboard", () -> found(name).isFocusOwner());
    }

    String focused() {
        return onEventThread(() -> {
            Component owner =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return owner == null ? "" : String.valueOf(owner.getName());
        });
    }

    Component found(String name) {
        Component found = find(name);
        if (found == null) {
            throw new IllegalStateException("The window has no " + name + ".");
        }
        return found;
    }

    @Nullable
    Component find(String name) {
        return all().stream()
                .filter(component -> name.equals(component.getName()) && component.isShowing())
                .findFirst()
                .orElse(null);
    }

    /** An item of the menus, whether it can be seen or not. */
    JMenuItem menu(String name) {
        JMenuBar bar = workbench.frame().getJMenuBar();
        for (int i = 0; i < bar.getMenuCount(); i++) {
            JMenuItem found = menu(bar.getMenu(i), name);
            if (found != null) {
                return found;
            }
        }
        throw new IllegalStateException("The menus have no " + name + ".");
    }

    private static @Nullable JMenuItem menu(JMenu in, String name) {
        for (Component each : in.getMenuComponents()) {
            JMenuItem found = each instanceof JMenu deeper ? menu(deeper, name) : null;
            if (found != null) {
                return found;
            }
            if (each instanceof JMenuItem item && name.equals(item.getName())) {
                return item;
            }
        }
        return null;
    }

    /** Every component of the window that can be seen. */
    List<Component> all() {
        List<Component> all = new ArrayList<>();
        collect(workbench.frame(), all);
        return all;
    }

    private static void collect(Container in, List<Component> all) {
        for (Component component : in.getComponents()) {
            if (component.isVisible()) {
                all.add(component);
                if (component instanceof Container container) {
                    collect(container, all);
                }
            }
        }
    }

    /** The first line of the card whose first row begins so. */
    setwright.window.model.Line line(String beginning) {
        return onEventThread(() -> screen().card().lines().stream()
                .filter(line -> line.spoken().startsWith(beginning))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("The card has no line " + beginning + ".")));
    }
}

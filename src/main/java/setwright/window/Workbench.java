package setwright.window;

import java.awt.EventQueue;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;
import setwright.window.desk.Desk;
import setwright.window.desk.Opened;
import setwright.window.desk.Opening;
import setwright.window.look.Look;
import setwright.window.model.Screen;
import setwright.window.state.Notice;
import setwright.window.state.Settings;
import setwright.window.state.SettingsFile;
import setwright.window.view.WorkbenchFrame;

/** The desktop window: opens it on a job, and waits until it is closed. */
public final class Workbench {
    /** How often the window asks whether the background is still at work, ms. */
    private static final int TICK = 500;

    private final CountDownLatch closed = new CountDownLatch(1);
    private final Desk desk;
    private final WorkbenchFrame frame;

    private Workbench(First first, Settings settings, Consumer<Settings> keep) {
        Look.named(settings.look()).putOn();
        var shown = new Shown();
        desk = new Desk(
                new Desk.Start(first.opened, settings, Clock.systemDefaultZone()), EventQueue::invokeLater, shown);
        frame = new WorkbenchFrame(desk);
        shown.frame = frame;
        desk.start();
        if (!first.notice.title().isEmpty()) {
            desk.tell(first.notice);
        }
        Timer ticks = new Timer(TICK, event -> desk.tick());
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                ticks.stop();
                desk.close();
                keep.accept(desk.settings());
                closed.countDown();
            }
        });
        ticks.start();
        frame.setLocationByPlatform(true);
        frame.setVisible(true);
    }

    /** What the window opens on, and what has to be told about it. */
    private record First(Opened opened, Notice notice) {
        /** The job that is named; where it cannot be read that is told, over a practice copy. */
        static First of(@Nullable Path job, Settings settings) {
            Notice refused = Notice.NONE;
            if (job != null) {
                Opening.Result read = Opening.file(job, settings);
                if (read.opened().isPresent()) {
                    return new First(read.opened().get(), Notice.NONE);
                }
                refused = read.notice();
            }
            Opening.Result practice = Opening.practice(settings);
            Notice none = practice.notice();
            return new First(
                    practice.opened()
                            .orElseThrow(() ->
                                    new IllegalStateException(none.title() + ": " + String.join("; ", none.lines()))),
                    refused);
        }
    }

    /** Screens go to the frame as soon as there is one. */
    private static final class Shown implements Consumer<Screen> {
        private @Nullable WorkbenchFrame frame;

        @Override
        public void accept(Screen screen) {
            if (frame != null) {
                frame.show(screen);
            }
        }
    }

    /**
     * Opens the window on a job with the person's own settings; on a practice copy where none is named.
     *
     * @throws java.awt.HeadlessException where there is no display
     */
    public static Workbench open(@Nullable Path job) {
        SettingsFile file = new SettingsFile(Folders.data());
        return open(job, file.read(Path.of("")), file::write);
    }

    /** @param keep is handed the settings when the window closes */
    static Workbench open(@Nullable Path job, Settings settings, Consumer<Settings> keep) {
        try {
            First first = First.of(job, settings);
            Settings now = job == null || !first.notice.title().isEmpty() ? settings : settings.withRecent(job);
            Workbench[] opened = new Workbench[1];
            EventQueue.invokeAndWait(() -> opened[0] = new Workbench(first, now, keep));
            return opened[0];
        } catch (InvocationTargetException why) {
            if (why.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (why.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException(why.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    WorkbenchFrame frame() {
        return frame;
    }

    Desk desk() {
        return desk;
    }

    /** Waits until the window is closed. */
    public void untilClosed() throws InterruptedException {
        closed.await();
    }
}

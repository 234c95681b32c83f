package setwright.window.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import setwright.window.model.Screen;
import setwright.window.state.Settings;

/** A desk on the practice job without a window: results of the background are delivered when the test waits for them. */
final class TestDesk implements AutoCloseable {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2025-05-02T08:00:00Z"), ZoneOffset.UTC);
    private static final long LONGEST_S = 60;

    private final BlockingQueue<Runnable> results = new LinkedBlockingQueue<>();
    private final Desk desk;

    TestDesk(Path workingFolder) {
        Settings settings = Settings.first(workingFolder);
        Opening.Result practice = Opening.practice(settings);
        assertThat(practice.notice().lines()).isEmpty();
        desk = new Desk(new Desk.Start(practice.opened().orElseThrow(), settings, CLOCK), results::add, screen -> {});
        desk.start();
    }

    Desk desk() {
        return desk;
    }

    /** The first screen of which this holds. */
    Screen when(Predicate<Screen> holds) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_S);
        while (!holds.test(desk.screen())) {
            try {
                Runnable result = results.poll(end - System.nanoTime(), TimeUnit.NANOSECONDS);
                assertThat(result)
                        .as("what was waited for; the screen is " + desk.screen())
                        .isNotNull();
                result.run();
            } catch (InterruptedException stopped) {
                throw new IllegalStateException(stopped);
            }
        }
        return desk.screen();
    }

    /** The screen once the newest state is worked out. */
    Screen settled() {
        return when(screen -> !desk.busy()
                && results.isEmpty()
                && desk.planned().filter(planned -> planned.upToDate()).isPresent());
    }

    @Override
    public void close() {
        desk.close();
    }
}

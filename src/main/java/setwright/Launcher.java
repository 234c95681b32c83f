package setwright;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;

/** Opens the window where there is a display, and waits until it is closed. */
final class Launcher implements setwright.command.Launcher {
    private final Predicate<Optional<Path>> window;

    /** @param window opens it and returns true once it is closed; false where it finds no display after all */
    Launcher(Predicate<Optional<Path>> window) {
        this.window = window;
    }

    @Override
    public boolean open(Optional<Path> job) {
        try {
            return hasDisplay() && window.test(job);
        } catch (AWTError | UnsupportedOperationException none) {
            return false;
        }
    }

    /** A dead DISPLAY throws although nothing is headless; all of it counts as no display. */
    private static boolean hasDisplay() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (AWTError | UnsupportedOperationException | LinkageError none) {
            return false;
        }
    }
}

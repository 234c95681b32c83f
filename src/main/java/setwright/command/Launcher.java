package setwright.command;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the window, so that no command needs to know it. */
@FunctionalInterface
public interface Launcher {
    /**
     * Opens the window on a job, or on the demonstration job where none is named.
     *
     * @return whether it was opened, once it is closed; false where there is no display
     */
    boolean open(Optional<Path> job);
}

package setwright.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The window on a job. */
@Command(name = "open", description = "Opens the window on a job.", sortOptions = false)
final class OpenCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Launcher launcher;

    @Mixin
    private Shared shared = new Shared();

    @Parameters(arity = "0..1", paramLabel = "JOB", description = "a job file; without one a demonstration job")
    private @Nullable Path job;

    OpenCommand(Terminal terminal, Launcher launcher) {
        this.terminal = terminal;
        this.launcher = launcher;
    }

    @Override
    public Integer call() {
        if (launcher.open(Optional.ofNullable(job))) {
            return Exit.CLEAN.code();
        }
        terminal.complain("There is no display to open a window on; 'check JOB' prints the plan as text.");
        return Exit.UNREADABLE.code();
    }
}

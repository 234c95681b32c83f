package setwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command. */
@Command(
        name = "setwright",
        description = "Plans set-ups for the milling shop. Without arguments it is the desktop window.",
        synopsisSubcommandLabel = "COMMAND",
        sortOptions = false)
final class RootCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    RootCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        terminal.complain("A command is missing.");
        spec.commandLine().usage(spec.commandLine().getErr());
        return Exit.UNREADABLE.code();
    }
}

package setwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import setwright.sheet.Kit;

/** What to fetch before starting. */
@Command(
        name = "kit",
        description = "Prints what to fetch for a job, by the place where it is kept.",
        sortOptions = false)
final class KitCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Parameters(paramLabel = "JOB", description = "a job file")
    private String job = "";

    KitCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        JobCheck.Worked check = JobCheck.required(job, shared, terminal);
        for (Kit.Shelf shelf : Kit.of(check.plan()).shelves()) {
            terminal.line(shelf.place());
            for (Kit.Item item : shelf.items()) {
                String remark = item.remark().isEmpty() ? "" : " (" + item.remark() + ")";
                terminal.line(Wrapped.behind("  ", item.name() + remark).stripTrailing());
            }
        }
        return Exit.CLEAN.code();
    }
}

package setwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import setwright.caution.Checks;
import setwright.caution.Page;

/** The page of a caution. */
@Command(
        name = "explain",
        description = "Says what a caution means, why it matters, what to do, and where it comes from.",
        sortOptions = false)
final class ExplainCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Parameters(paramLabel = "SLUG", description = "the name of a caution, such as slides-in-grip")
    private String slug = "";

    ExplainCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Page page = Page.of(slug)
                .orElseThrow(() -> new Complaint(
                        "There is no caution '" + slug + "'; there are: " + String.join(", ", Checks.slugs()) + "."));
        terminal.line(page.text().stripTrailing());
        return Exit.CLEAN.code();
    }
}

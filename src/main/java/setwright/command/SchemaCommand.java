package setwright.command;

import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import setwright.file.Schema;

/** The schemas of what the program reads and prints. */
@Command(
        name = "schema",
        description = "Prints the JSON Schema of job files, of shop files, or of the check's answer.",
        sortOptions = false)
final class SchemaCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Parameters(paramLabel = "job|shop|check")
    private String of = "";

    SchemaCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Schema schema = switch (of.toLowerCase(Locale.ROOT)) {
            case "job" -> Schema.JOB;
            case "shop" -> Schema.SHOP;
            case "check" -> Schema.CHECK;
            default -> throw new Complaint("There is no schema '" + of + "'; there are job, shop and check.");
        };
        terminal.line(schema.text().stripTrailing());
        return Exit.CLEAN.code();
    }
}

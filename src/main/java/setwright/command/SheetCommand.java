package setwright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import setwright.quantity.Printing;
import setwright.quantity.UnitSystem;
import setwright.sheet.SetUpSheet;
import setwright.sheet.TextSheet;

/** The set-up sheet of a job. */
@Command(
        name = "sheet",
        description = "Writes the set-up sheet of a job, in the form that the file's ending names.",
        sortOptions = false)
final class SheetCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Parameters(paramLabel = "JOB", description = "a job file")
    private String job = "";

    @Option(names = "-o", required = true, paramLabel = "FILE", description = "where it goes; ends with .txt")
    private @Nullable Path file;

    SheetCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Path target = terminal.folder().resolve(String.valueOf(file));
        if (!target.toString().toLowerCase(Locale.ROOT).endsWith(".txt")) {
            throw new Complaint("A sheet is written as .txt here; " + target.getFileName() + " ends otherwise.");
        }
        JobCheck.Worked check = JobCheck.required(job, shared, terminal);
        write(target, text(check));
        return Exit.CLEAN.code();
    }

    private String text(JobCheck.Worked check) {
        UnitSystem units = shared.unitsOr(check.plan().job().plan().units());
        return TextSheet.text(SetUpSheet.of(check.plan(), SheetFindings.of(check), new Printing(units)));
    }

    private static void write(Path target, String text) {
        try {
            Files.writeString(target, text, StandardCharsets.UTF_8);
        } catch (IOException unwritten) {
            throw new Complaint(target + " cannot be written: " + unwritten.getMessage());
        }
    }
}

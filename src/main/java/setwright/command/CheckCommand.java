package setwright.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import setwright.caution.Severity;
import setwright.file.json.Json;
import setwright.shop.Shop;

/** Plan and cautions of jobs. */
@Command(
        name = "check",
        description = "Works each job out and prints plan and cautions. A folder means every job in it and below it.",
        footer = {
            "",
            "Exit codes: 0 nothing to stop; 1 a stop that is not accepted; 3 stops, all accepted by the lead;",
            "2 a job that cannot be read. Several jobs end with the worst, in the order 2, 1, 3, 0."
        },
        sortOptions = false)
final class CheckCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Option(names = "--json", description = "one JSON object a job, one a line where there are several")
    private boolean json;

    @Option(
            names = "--severity",
            paramLabel = "stop|caution|note",
            description = "print cautions from this severity on; the exit code heeds all of them")
    private String severity = "note";

    @Parameters(arity = "1..*", paramLabel = "JOB", description = "a job file, or a folder of them")
    private List<String> names = new ArrayList<>();

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Severity least = severity();
        boolean one = names.size() == 1 && !Files.isDirectory(path(names.get(0)));
        List<Exit> exits = new ArrayList<>();
        ShopShelf shelf = new ShopShelf(shared.shop(), terminal.folder());
        for (String file : files()) {
            Shop shop = shelf.shop(path(file));
            JobCheck check = JobCheck.of(file, path(file), shop);
            print(check, least, one, exits.isEmpty());
            exits.add(check.exit());
        }
        return Exit.worst(exits).code();
    }

    private void print(JobCheck check, Severity least, boolean one, boolean first) {
        if (json) {
            Json.Layout layout = one ? Json.Layout.PRETTY : Json.Layout.ONE_LINE;
            terminal.line(Json.text(CheckJson.of(check, least), layout).stripTrailing());
        } else if (check instanceof JobCheck.Worked worked) {
            terminal.line((first ? "" : "\n" + "-".repeat(Wrapped.COLUMNS) + "\n\n")
                    + new CheckText(worked, least, shared.units()).text().stripTrailing());
        } else {
            terminal.complain(complaint((JobCheck.Unreadable) check));
        }
        terminal.flush();
    }

    static String complaint(JobCheck.Unreadable check) {
        return check.problems().stream()
                .map(problem -> check.file()
                        + (problem.line() == 0 ? "" : ", line " + problem.line() + ", column " + problem.column())
                        + ": "
                        + problem.message())
                .collect(Collectors.joining("\n"));
    }

    private Severity severity() {
        return Arrays.stream(Severity.values())
                .filter(one -> one.written().equals(severity.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Complaint("--severity is stop, caution or note, not '" + severity + "'."));
    }

    private Path path(String name) {
        try {
            return terminal.folder().resolve(name);
        } catch (InvalidPathException unreadable) {
            throw new Complaint("'" + name + "' is not the name of a file.");
        }
    }

    /** Every file that was named, and every job below a folder, in the order of their names. */
    private List<String> files() {
        List<String> files = new ArrayList<>();
        for (String name : names) {
            if (Files.isDirectory(path(name))) {
                files.addAll(below(name));
            } else {
                files.add(name);
            }
        }
        return files;
    }

    private List<String> below(String folder) {
        Path root = path(folder);
        try (Stream<Path> all = Files.walk(root)) {
            List<String> jobs = all.filter(Files::isRegularFile)
                    .filter(file -> file.toString().endsWith(".json"))
                    .map(file -> Path.of(folder).resolve(root.relativize(file)).toString())
                    .sorted()
                    .toList();
            if (jobs.isEmpty()) {
                throw new Complaint(folder + " holds no job; a job's name ends with .json.");
            }
            return jobs;
        } catch (IOException unread) {
            throw new Complaint(folder + " cannot be listed: " + unread.getMessage());
        }
    }
}

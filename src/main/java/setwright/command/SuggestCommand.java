package setwright.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import setwright.caution.choice.Ranked;
import setwright.file.JobFile;
import setwright.file.json.Json;
import setwright.job.ChoiceEdits;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Job;
import setwright.plan.Planner;
import setwright.quantity.Printing;

/** What else would hold the work and the cutters of a set-up. */
@Command(
        name = "suggest",
        description =
                "Ranks what the shop owns to hold the work of a set-up and the cutters of its operations, each kept"
                        + " or dropped with its reasons. With --take and -o writes the job with one of them.",
        sortOptions = false)
final class SuggestCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Parameters(paramLabel = "JOB", description = "a job file")
    private String job = "";

    @Option(names = "--set-up", paramLabel = "N", description = "its number or its id; the first where none is named")
    private String setUp = "1";

    @Option(names = "--json", description = "one JSON object")
    private boolean json;

    @Option(names = "--all", description = "list also what does not suit at all")
    private boolean all;

    @Option(names = "--take", paramLabel = "K", description = "take the holding of rank K")
    private @Nullable Integer take;

    @Option(
            names = "--holder-of",
            paramLabel = "OPERATION",
            description = "take the holder of rank K for this operation")
    private @Nullable String holderOf;

    @Option(names = "--because", paramLabel = "REASON", description = "why it is not the first; kept in the job")
    private String because = "";

    @Option(names = "-o", paramLabel = "FILE", description = "where the job with it is written")
    private @Nullable Path file;

    SuggestCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if ((take == null) != (file == null)) {
            throw new Complaint(
                    "--take K and -o FILE go together: one says what is taken, the other where it is written.");
        }
        if (take == null && holderOf != null) {
            throw new Complaint("--holder-of says for which operation --take K -o FILE takes a holder.");
        }
        Suggested.Read read = Suggested.Read.of(job, shared, terminal);
        DrawnSetUp chosen = chosen(read.plan().drawnUp().setUps());
        if (take != null && file != null) {
            taken(read, chosen, take, terminal.folder().resolve(file));
        } else {
            print(read.suggested(chosen));
        }
        return Exit.CLEAN.code();
    }

    private void print(Suggested suggested) {
        String text = json
                ? Json.text(SuggestJson.of(suggested), Json.Layout.PRETTY)
                : new SuggestText(
                                suggested,
                                new Printing(shared.unitsOr(
                                        suggested.plan().job().plan().units())),
                                all)
                        .text();
        terminal.line(text.stripTrailing());
    }

    private DrawnSetUp chosen(List<DrawnSetUp> all) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).id().equals(setUp) || Integer.toString(i + 1).equals(setUp)) {
                return all.get(i);
            }
        }
        throw new Complaint("The job has no set-up " + setUp + "; it has "
                + all.stream().map(DrawnSetUp::id).collect(Collectors.joining(", ")) + ".");
    }

    private void taken(Suggested.Read read, DrawnSetUp of, int rank, Path target) {
        String subject = holderOf == null ? of.id() : holderOf;
        List<Ranked> ranked = holderOf == null ? read.holdings(of) : read.holders(operation(of, holderOf));
        Ranked one = ranked.stream()
                .filter(each -> each.rank() == rank)
                .findFirst()
                .orElseThrow(() ->
                        new Complaint("There is no rank " + rank + "; the ranks are 1 to " + ranked.size() + "."));
        if (!one.kept()) {
            throw new Complaint(one.text() + " is dropped: " + String.join("; ", one.reasons()) + ".");
        }
        Job changed = ChoiceEdits.because(one.changed(), subject, rank == 1 ? "" : because);
        try {
            JobFile.save(target, changed, Planner.plan(changed, read.shop()).drawnUp());
        } catch (IOException unwritten) {
            throw new Complaint(target + " cannot be written: " + unwritten.getMessage());
        }
        terminal.line(target.getFileName() + ": " + one.text());
    }

    private static DrawnOperation operation(DrawnSetUp of, String id) {
        return of.operation(id)
                .orElseThrow(() -> new Complaint("Set-up " + of.id() + " has no operation " + id + "; it has "
                        + of.operations().stream().map(DrawnOperation::id).collect(Collectors.joining(", ")) + "."));
    }
}

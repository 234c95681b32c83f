package setwright.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import setwright.caution.Caution;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.review.Change;
import setwright.review.Compare;

/** What changed between two jobs, and what came of it. */
@Command(
        name = "compare",
        description =
                "Prints what changed between two jobs, with its effect. Exit codes: 0 same; 1 differs; 2 unreadable.",
        sortOptions = false)
final class CompareCommand implements Callable<Integer> {
    private static final int DIFFERS = 1;

    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Option(names = "--json", description = "one JSON object")
    private boolean json;

    @Parameters(index = "0", paramLabel = "OLD", description = "a job file")
    private String old = "";

    @Parameters(index = "1", paramLabel = "NEW", description = "a job file")
    private String changed = "";

    CompareCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        JobCheck.Worked before = JobCheck.required(old, shared, terminal);
        JobCheck.Worked now = JobCheck.required(changed, shared, terminal);
        List<Change> changes = Compare.of(before.plan(), before.findings(), now.plan(), now.findings());
        if (json) {
            Tree tree = Json.object()
                    .put(
                            "changes",
                            Json.array(
                                    changes.stream().map(CompareCommand::tree).toList()))
                    .build();
            terminal.line(Json.text(tree, Json.Layout.PRETTY).stripTrailing());
        } else {
            terminal.line(text(changes).stripTrailing());
        }
        return changes.isEmpty() ? Exit.CLEAN.code() : DIFFERS;
    }

    private static Tree tree(Change change) {
        return Json.object()
                .put("where", change.where())
                .put("what", change.what())
                .put("old", change.before())
                .put("new", change.now())
                .put(
                        "effect",
                        Json.object()
                                .put(
                                        "time",
                                        Unit.MINUTE.fromInside(change.effect().time()))
                                .put("cautionsAdded", slugs(change.effect().added()))
                                .put("cautionsCleared", slugs(change.effect().cleared())))
                .build();
    }

    private static Tree slugs(List<Caution> cautions) {
        return Json.texts(cautions.stream().map(Caution::slug).distinct().toList());
    }

    private static String text(List<Change> changes) {
        if (changes.isEmpty()) {
            return "Nothing differs.";
        }
        StringBuilder text = new StringBuilder();
        for (Change change : changes) {
            String where = change.where().isEmpty() ? "job" : change.where();
            text.append(Wrapped.behind(
                    where + " " + change.what() + ": ",
                    change.before() + " -> " + change.now() + effect(change.effect())));
        }
        return text.toString();
    }

    private static String effect(Change.Effect effect) {
        StringBuilder text = new StringBuilder();
        if (Math.abs(effect.time()) >= 1) {
            text.append(effect.time() > 0 ? "; +" : "; -")
                    .append(new Printing(UnitSystem.METRIC).of(Measure.TIME, Math.abs(effect.time())))
                    .append(" a part");
        }
        effect.added().stream()
                .map(Caution::slug)
                .distinct()
                .forEach(slug -> text.append("; brings ").append(slug));
        effect.cleared().stream()
                .map(Caution::slug)
                .distinct()
                .forEach(slug -> text.append("; clears ").append(slug));
        return text.toString();
    }
}

package setwright.figures;

import static setwright.figures.Input.words;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import setwright.file.json.Problem;
import setwright.file.json.TextFile;
import setwright.holding.balance.FrictionBalance;
import setwright.holding.balance.Grip;
import setwright.holding.balance.Load;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Worked;

/** How many times a load a set of contacts bears. */
final class HoldBalanceFigure {
    static final Figure FIGURE = new Figure(
            "hold-balance",
            "The contacts and loads written in {file} hold",
            List.of(words("file")),
            List.of("factor", "first-to-give"),
            HoldBalanceFigure::answer);

    private HoldBalanceFigure() {}

    private static Answered answer(Asked asked) {
        BalanceFile.Read read = BalanceFile.read(TextFile.read(path(asked.words("file"))));
        if (!read.problems().isEmpty()) {
            throw Refusal.of(
                    "file",
                    asked.words("file")
                            + read.problems().stream()
                                    .map(problem -> place(problem) + ": " + problem.message())
                                    .collect(Collectors.joining()));
        }
        return balance(read);
    }

    private static Path path(String file) {
        try {
            return Path.of(file);
        } catch (InvalidPathException unreadable) {
            throw Refusal.of("file", "'" + file + "' is not the name of a file.");
        }
    }

    private static String place(Problem problem) {
        return problem.line() == 0 ? "" : ", line " + problem.line() + ", column " + problem.column();
    }

    private static Answered balance(BalanceFile.Read read) {
        setwright.holding.balance.Answer answer =
                new FrictionBalance(new Grip(read.contacts(), Load.NONE)).answer(read.loads());
        Worked factor = FrictionBalance.worked(
                answer,
                Given.of("contacts", read.contacts().size(), Unit.NONE, "the file"),
                Given.of("loads", read.loads().size(), Unit.NONE, "the file"));
        return Answered.of(
                Answer.of("factor", factor, Unit.NONE),
                switch (answer.kind()) {
                    case HOLDS ->
                        new Answer.Words(
                                "first-to-give",
                                ((setwright.holding.balance.Answer.Holds) answer)
                                        .firstToGive()
                                        .name());
                    case DOES_NOT_STAND ->
                        new Answer.Words(
                                "first-to-give",
                                ((setwright.holding.balance.Answer.DoesNotStand) answer)
                                        .firstToGive()
                                        .name());
                    case BEYOND_ASKED -> new Answer.Nothing("first-to-give", "");
                });
    }
}

package setwright.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import setwright.figures.Figure;
import setwright.figures.Figures;
import setwright.figures.Input;
import setwright.figures.Question;
import setwright.figures.Refusal;
import setwright.file.json.Json;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/** Bench figures. */
@Command(
        name = "figure",
        description =
                "Answers one small question of the bench and says how it was worked out. '-' reads a question a line"
                        + " from standard input; without a name all figures are listed.",
        sortOptions = false)
final class FigureCommand implements Callable<Integer> {
    private static final String FROM_INPUT = "-";

    private final Terminal terminal;

    @Mixin
    private Shared shared = new Shared();

    @Option(names = "--json", description = "one JSON object a question")
    private boolean json;

    @Parameters(
            arity = "0..*",
            paramLabel = "NAME key=value",
            description = "a figure and its inputs, with their units")
    private List<String> words = new ArrayList<>();

    FigureCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        if (words.isEmpty()) {
            Figures.all().forEach(figure -> terminal.line(listed(figure)));
            return Exit.CLEAN.code();
        }
        UnitSystem units = shared.unitsOr(UnitSystem.METRIC);
        Shop shop = new ShopShelf(shared.shop(), terminal.folder()).shop(null);
        if (words.get(0).equals(FROM_INPUT)) {
            return lines(units, shop);
        }
        Question question = Question.of(words.get(0), words.subList(1, words.size()));
        terminal.line(answer(question, units, shop));
        return Exit.CLEAN.code();
    }

    private static String listed(Figure figure) {
        return figure.name() + ": "
                + figure.inputs().stream().map(Input::listed).collect(Collectors.joining(", ")) + " -> "
                + String.join(", ", figure.answers());
    }

    private int lines(UnitSystem units, Shop shop) {
        BufferedReader reader = new BufferedReader(new InputStreamReader(terminal.in(), StandardCharsets.UTF_8));
        try {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                terminal.line(answerOrError(line, units, shop));
                terminal.out().flush();
            }
        } catch (IOException unread) {
            throw new UncheckedIOException("Standard input cannot be read.", unread);
        }
        return Exit.CLEAN.code();
    }

    private String answerOrError(String line, UnitSystem units, Shop shop) {
        try {
            return answer(Question.of(line), units, shop);
        } catch (Refusal refusal) {
            String message = String.valueOf(refusal.getMessage());
            return json
                    ? Json.text(Json.object().put("error", message).build(), Json.Layout.ONE_LINE)
                    : "error: " + message + "\n";
        }
    }

    private String answer(Question question, UnitSystem units, Shop shop) {
        Figure.Reply reply = Figures.required(question.figure()).ask(question, units, shop);
        return json
                ? Json.text(FigureJson.of(reply), Json.Layout.ONE_LINE)
                : new FigureText(reply, units).text().stripTrailing();
    }
}

package setwright.window.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import setwright.figures.Answer;
import setwright.figures.AnswerText;
import setwright.figures.Figure;
import setwright.figures.Figures;
import setwright.figures.Input;
import setwright.figures.Question;
import setwright.figures.Refusal;
import setwright.job.Standing;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.quantity.Working;
import setwright.shop.Shop;
import setwright.window.state.BenchQuestion;

/** What stands on the page of bench figures. */
public record BenchModel(BenchQuestion question, UnitSystem units, Shop shop) {
    private static final int SHOWN = 9;

    /** @param takes which fields the chosen operation has */
    public BenchPage page(List<String> takes) {
        if (!question.open()) {
            return BenchPage.CLOSED;
        }
        List<BenchPage.Found> found = found().stream()
                .limit(SHOWN)
                .map(figure -> new BenchPage.Found(figure.name(), plain(figure.sentence())))
                .toList();
        return Figures.named(question.figure())
                .map(figure -> asked(figure, found, takes))
                .orElseGet(() ->
                        new BenchPage(true, question.search(), found, "", "", List.of(), List.of(), "", "", List.of()));
    }

    public List<Figure> found() {
        return FigureSearch.find(question.search(), question.recent());
    }

    private BenchPage asked(Figure figure, List<BenchPage.Found> found, List<String> takes) {
        List<Field> blanks = figure.inputs().stream().map(this::blank).toList();
        List<BenchPage.Answer> answers = new ArrayList<>();
        List<BenchPage.Use> uses = new ArrayList<>();
        String worked = "";
        String said;
        try {
            Figure.Reply reply = figure.ask(new Question(figure.name(), question.typed()), units, shop);
            AnswerText text = new AnswerText(units);
            for (Answer answer : reply.answered().answers()) {
                answers.add(new BenchPage.Answer(words(answer.name()), text.of(answer)));
                if (takes.contains(field(answer))) {
                    uses.add(new BenchPage.Use(field(answer), text.of(answer)));
                }
            }
            worked = reply.answered().worked().stream()
                    .map(each -> Working.of(each, new Printing(units)).text())
                    .collect(Collectors.joining("\n"));
            said = String.join("; ", reply.answered().notes());
        } catch (Refusal why) {
            List<String> missing = missing(figure);
            said = missing.isEmpty() ? String.valueOf(why.getMessage()) : "Still asked: " + String.join(", ", missing);
        }
        return new BenchPage(
                true, question.search(), found, figure.name(), sentence(figure), blanks, answers, worked, said, uses);
    }

    private List<String> missing(Figure figure) {
        return figure.inputs().stream()
                .filter(Input::required)
                .filter(input -> typed(input).isBlank())
                .map(input -> words(input.key()))
                .toList();
    }

    private String typed(Input input) {
        return question.typed().getOrDefault(input.key(), "");
    }

    private Field blank(Input input) {
        boolean typed = !typed(input).isBlank();
        String unit = input.unit(units);
        String label = words(input.key())
                + (unit.isEmpty() ? "" : ", " + unit)
                + (input.required() || !input.standard().isEmpty() ? "" : " (" + input.leftOut() + ")");
        List<Choice> choices = new ArrayList<>();
        if (input.kind() == Input.Kind.CHOICE) {
            if (input.standard().isEmpty()) {
                choices.add(new Choice("", "-"));
            }
            input.choices().forEach(choice -> choices.add(new Choice(choice, choice)));
        }
        return new Field(
                input.key(),
                label,
                typed ? typed(input) : input.standard(),
                typed ? Standing.INKED : Standing.PENCILLED,
                "",
                choices);
    }

    private String sentence(Figure figure) {
        String sentence = figure.sentence();
        for (Input input : figure.inputs()) {
            String shown = typed(input).isBlank() ? input.standard() : typed(input);
            sentence =
                    sentence.replace("{" + input.key() + "}", shown.isBlank() ? "(" + words(input.key()) + ")" : shown);
        }
        return sentence;
    }

    private static String plain(String sentence) {
        return words(sentence.replace("{", "(").replace("}", ")"));
    }

    private static String words(String key) {
        return key.replace('-', ' ');
    }

    /** The field of an operation that an answer may go into; empty where there is none. */
    private static String field(Answer answer) {
        if (!(answer instanceof Answer.Number number)) {
            return "";
        }
        return switch (number.name()) {
            case "speed" -> number.unit() == Unit.RPM ? "speed" : "";
            case "feed" -> number.unit() == Unit.MM_PER_MIN ? "feed" : "";
            case "depth", "largest-depth", "drill-depth" -> number.unit() == Unit.MM ? "depth" : "";
            default -> "";
        };
    }
}

package setwright.command;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import setwright.figures.Answer;
import setwright.figures.Figure;
import setwright.file.json.Json;
import setwright.file.json.Tree;
import setwright.quantity.Given;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/** A bench figure's answer as JSON: numbers in full, in the unit of the table. */
final class FigureJson {
    private FigureJson() {}

    static Tree of(Figure.Reply reply) {
        Json.ObjectBuilder object = Json.object()
                .put("figure", reply.figure().name())
                .put(
                        "answers",
                        Json.array(reply.answered().answers().stream()
                                .map(FigureJson::answer)
                                .toList()))
                .put("worked", Json.array(worked(reply.answered().worked())));
        List<String> notes = reply.answered().notes();
        return (notes.isEmpty() ? object : object.put("notes", Json.texts(notes))).build();
    }

    private static Tree answer(Answer answer) {
        return Json.object()
                .put("name", answer.name())
                .put("value", value(answer))
                .put("unit", unit(answer))
                .build();
    }

    private static Tree value(Answer answer) {
        return switch (answer.kind()) {
            case NUMBER -> Json.number(clean(((Answer.Number) answer).inUnit()));
            case COUNT -> Json.number(((Answer.Count) answer).count());
            case COUNTS ->
                Json.array(((Answer.Counts) answer)
                        .counts().stream()
                                .<Tree>map(count -> Json.number((long) count))
                                .toList());
            case WORDS -> Json.text(((Answer.Words) answer).words());
            case FLAG -> Json.flag(((Answer.Flag) answer).yes());
            case NOTHING -> Json.nothing();
            case NUMBERS -> Json.array(numbers((Answer.Numbers) answer));
            case ROWS ->
                Json.array(((Answer.Rows) answer)
                        .rows().stream().map(FigureJson::row).toList());
        };
    }

    private static List<Tree> numbers(Answer.Numbers numbers) {
        return numbers.inside().stream()
                .map(inside -> Json.number(clean(numbers.unit().fromInside(inside))))
                .toList();
    }

    /** In full, but without what the change of unit leaves in the last place. */
    private static double clean(double number) {
        return BigDecimal.valueOf(number).round(new MathContext(16)).doubleValue();
    }

    private static Tree row(List<Answer> cells) {
        Json.ObjectBuilder row = Json.object();
        cells.forEach(cell -> row.put(cell.name(), value(cell)));
        return row.build();
    }

    private static String unit(Answer answer) {
        return switch (answer.kind()) {
            case NUMBER -> ((Answer.Number) answer).unit().symbol();
            case NUMBERS -> ((Answer.Numbers) answer).unit().symbol();
            case NOTHING -> ((Answer.Nothing) answer).unit();
            case ROWS -> unitOfCells((Answer.Rows) answer);
            case COUNT, COUNTS, WORDS, FLAG -> "";
        };
    }

    private static String unitOfCells(Answer.Rows rows) {
        return rows.rows().stream()
                .flatMap(List::stream)
                .filter(cell -> cell.kind() == Answer.Kind.NUMBER)
                .map(FigureJson::unit)
                .findFirst()
                .orElse("");
    }

    /** Each once: the answers first, then what went into them. */
    private static List<Tree> worked(List<Worked> asked) {
        List<Worked> all = new ArrayList<>();
        asked.forEach(worked -> gather(worked, all));
        return all.stream().map(FigureJson::worked).toList();
    }

    private static void gather(Worked worked, List<Worked> all) {
        if (all.stream().anyMatch(before -> same(before, worked))) {
            return;
        }
        all.add(worked);
        for (Value from : worked.from()) {
            if (from instanceof Worked before) {
                gather(before, all);
            }
        }
    }

    private static boolean same(Worked one, Worked other) {
        return one.inside() == other.inside()
                && one.rule().text().equals(other.rule().text())
                && one.deciding().equals(other.deciding())
                && one.from().equals(other.from());
    }

    private static Tree worked(Worked worked) {
        return Json.object()
                .put("name", worked.name())
                .put("rule", worked.rule().text())
                .put("source", worked.rule().source().text())
                .put(
                        "given",
                        Json.array(worked.from().stream().map(FigureJson::given).toList()))
                .build();
    }

    private static Tree given(Value value) {
        return Json.object()
                .put("name", value.name())
                .put("value", clean(value.printed()))
                .put("unit", value.unit().symbol())
                .put("from", value instanceof Given given ? given.origin() : "worked out")
                .build();
    }
}

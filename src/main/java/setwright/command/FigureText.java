package setwright.command;

import java.util.List;
import java.util.stream.Collectors;
import setwright.figures.Answer;
import setwright.figures.AnswerText;
import setwright.figures.Figure;
import setwright.figures.Input;
import setwright.figures.ReadInput;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;
import setwright.quantity.Worked;
import setwright.quantity.Working;

/** A bench figure's answer as text: how the inputs were read, the answers, the working. */
record FigureText(Figure.Reply reply, UnitSystem units) {
    private static final String INDENT = "  ";

    String text() {
        StringBuilder text = new StringBuilder();
        text.append(reply.figure().name()).append("\n\nRead as\n").append(inputs());
        text.append("\nAnswers\n").append(answers());
        for (String note : reply.answered().notes()) {
            text.append("\n").append(Wrapped.behind("Note: ", note));
        }
        if (!reply.answered().worked().isEmpty()) {
            text.append("\nHow it was worked out\n");
        }
        for (Worked worked : reply.answered().worked()) {
            text.append("\n")
                    .append(indented(Working.of(worked, new Printing(units)).text()));
        }
        return text.toString();
    }

    private static String indented(String working) {
        return working.lines().map(line -> INDENT + line + "\n").collect(Collectors.joining());
    }

    private String inputs() {
        TextTable table = new TextTable("", "", "");
        for (ReadInput input : reply.asked().inputs()) {
            table.row(input.input().key(), read(input), origin(input));
        }
        return headless(table);
    }

    /** As read in the metric unit of the table, or in the unit that an inch person reads. */
    private String read(ReadInput input) {
        return input.values().isEmpty()
                ? input.words()
                : input.values().stream()
                        .map(value -> read(input.input(), value))
                        .collect(Collectors.joining(", "));
    }

    private String read(Input input, Given value) {
        Measure measure = input.measure();
        if (measure == null) {
            return Long.toString(Math.round(value.inside()));
        }
        Unit unit = measure.unit(units);
        return digits(unit.fromInside(value.inside())) + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }

    /** As many digits as an input can have been typed with. */
    private static String digits(double number) {
        return new java.math.BigDecimal(number)
                .round(new java.math.MathContext(7))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String origin(ReadInput input) {
        return input.isStandard() ? "(left out: the usual value)" : "(typed " + input.typed() + ")";
    }

    private String answers() {
        TextTable table = new TextTable("", "");
        reply.answered().answers().stream()
                .filter(answer -> answer.kind() != Answer.Kind.ROWS)
                .forEach(answer -> table.row(answer.name(), printed(answer)));
        StringBuilder text = new StringBuilder(headless(table));
        for (Answer answer : reply.answered().answers()) {
            if (answer instanceof Answer.Rows rows) {
                text.append(INDENT).append(rows.name()).append("\n").append(rows(rows));
            }
        }
        return text.toString();
    }

    private String rows(Answer.Rows rows) {
        if (rows.rows().isEmpty()) {
            return INDENT + INDENT + "none\n";
        }
        List<Answer> first = rows.rows().get(0);
        TextTable table = new TextTable(first.stream()
                .map(cell -> (cell.kind() == Answer.Kind.NUMBER ? ">" : "") + cell.name())
                .toArray(String[]::new));
        rows.rows().forEach(row -> table.row(row.stream().map(this::printed).toList()));
        return table.text(INDENT + INDENT);
    }

    private String printed(Answer answer) {
        return new AnswerText(units).of(answer);
    }

    private static String headless(TextTable table) {
        return table.text(INDENT).lines().skip(1).map(line -> line + "\n").collect(Collectors.joining());
    }
}

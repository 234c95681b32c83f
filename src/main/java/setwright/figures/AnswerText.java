package setwright.figures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.quantity.Measure;
import setwright.quantity.Printing;
import setwright.quantity.Unit;
import setwright.quantity.UnitSystem;

/** Answers as metric or inch people read them. */
public record AnswerText(UnitSystem units) {
    private static final int METRIC_DECIMALS = 4;
    private static final int INCH_DECIMALS = 5;

    /** One answer; of a table its rows, each in brackets. */
    public String of(Answer answer) {
        return switch (answer.kind()) {
            case NUMBER -> number((Answer.Number) answer);
            case COUNT -> Long.toString(((Answer.Count) answer).count());
            case COUNTS ->
                ((Answer.Counts) answer).counts().stream().map(String::valueOf).collect(Collectors.joining(", "));
            case WORDS -> ((Answer.Words) answer).words();
            case FLAG -> ((Answer.Flag) answer).yes() ? "yes" : "no";
            case NUMBERS -> numbers((Answer.Numbers) answer);
            case NOTHING -> "does not apply here";
            case ROWS ->
                ((Answer.Rows) answer)
                        .rows().stream()
                                .map(row -> row.stream()
                                        .map(cell -> cell.name() + " " + of(cell))
                                        .collect(Collectors.joining(", ")))
                                .collect(Collectors.joining("; "));
        };
    }

    private String numbers(Answer.Numbers numbers) {
        return numbers.inside().stream()
                .map(inside -> number(Answer.of(numbers.name(), inside, numbers.unit())))
                .collect(Collectors.joining(", "));
    }

    /** Lengths to what a gauge block or a dial tells apart, others as they are printed everywhere. */
    private String number(Answer.Number number) {
        if (number.unit() == Unit.MM) {
            Unit unit = Measure.LENGTH.unit(units);
            return new BigDecimal(unit.fromInside(number.inside()))
                            .setScale(unit == Unit.MM ? METRIC_DECIMALS : INCH_DECIMALS, RoundingMode.HALF_EVEN)
                            .stripTrailingZeros()
                            .toPlainString()
                    + " " + unit.symbol();
        }
        Printing printing = new Printing(units);
        Optional<Measure> measure = Arrays.stream(Measure.values())
                .filter(one -> one.unit(UnitSystem.METRIC) == number.unit())
                .findFirst();
        return measure.map(one -> printing.of(one, number.inside()))
                .orElseGet(() -> printing.of(number.unit(), number.inside()));
    }
}

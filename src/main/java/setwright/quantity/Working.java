package setwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How a number was worked out, as a handbook prints it: the rule, the rule with the numbers put in, the result, what
 * went in, the source; then the same for whatever went in and was worked out itself, each once.
 */
public record Working(List<Line> lines) {

    /**
     * One line.
     *
     * @param depth 0 for the number asked for, one more for what went into it
     * @param origin of a given: the place where it came from, so that a window can go there; else empty
     */
    public record Line(int depth, Part part, String text, String origin) {}

    /** What a line says. */
    public enum Part {
        NAME,
        RULE,
        NUMBERS,
        DECIDING,
        RESULT,
        INPUT,
        SOURCE
    }

    public Working {
        lines = List.copyOf(lines);
    }

    /** The working of a value; for inch people a result in millimetres is printed in inches too. */
    public static Working of(Worked worked, Printing printing) {
        Writer writer = new Writer(printing);
        writer.write(worked, 0);
        return new Working(writer.lines);
    }

    /** The lines below each other, each depth two blanks further in and what belongs to a name below it. */
    public String text() {
        return lines.stream()
                .map(line -> "  ".repeat(line.depth() + (line.part() == Part.NAME ? 0 : 1)) + line.text() + "\n")
                .collect(Collectors.joining());
    }

    private static final class Writer {
        private static final Digits PUT_IN = Digits.significantOrWhole(4);

        private final Printing printing;
        private final List<Line> lines = new ArrayList<>();
        private final List<Worked> written = new ArrayList<>();

        private Writer(Printing printing) {
            this.printing = printing;
        }

        private void write(Worked worked, int depth) {
            written.add(worked);
            add(depth, Part.NAME, worked.name());
            String letter = switch (worked.rule().kind()) {
                case FORMULA -> formula(worked, (Formula) worked.rule(), depth);
                case TABLE -> other(worked, List.of(worked.rule().text()), depth);
                case PROCEDURE -> other(worked, ((Procedure) worked.rule()).steps(), depth);
            };
            add(depth, Part.RESULT, letter + " = " + (depth == 0 ? result(worked) : onTheWay(worked)));
            inputs(worked, depth);
            add(depth, Part.SOURCE, "source: " + worked.rule().source().text());
            for (Value input : worked.from()) {
                if (input instanceof Worked before && !isWritten(before)) {
                    write(before, depth + 1);
                }
            }
        }

        private String formula(Worked worked, Formula formula, int depth) {
            String letter = formula.result().letter();
            add(depth, Part.RULE, formula.text());
            List<String> letters = formula.inputs().stream().map(Symbol::letter).toList();
            String numbers = WrittenFormula.of(formula).with(symbol -> {
                int i = letters.indexOf(symbol);
                Unit unit = formula.inputs().get(i).unit();
                String number = putIn(unit, worked.from().get(i)) + (unit == Unit.DEG ? unit.symbol() : "");
                return number.startsWith("-") ? "(" + number + ")" : number;
            });
            add(depth, Part.NUMBERS, letter + " = " + numbers);
            if (!worked.deciding().isEmpty()) {
                add(depth, Part.DECIDING, worked.deciding());
            }
            return letter;
        }

        private String other(Worked worked, List<String> steps, int depth) {
            steps.forEach(step -> add(depth, Part.RULE, step));
            if (!worked.deciding().isEmpty()) {
                add(depth, Part.DECIDING, worked.deciding());
            }
            return worked.name();
        }

        private void inputs(Worked worked, int depth) {
            for (int i = 0; i < worked.from().size(); i++) {
                Value value = worked.from().get(i);
                String said = worked.rule() instanceof Formula formula
                        ? formula.inputs().get(i).letter() + " = "
                                + with(formula.inputs().get(i).unit(), value) + ", " + value.name()
                        : value.name() + " = " + with(value.unit(), value);
                if (value instanceof Given given) {
                    String from = given.origin().isEmpty() ? "" : ": " + given.origin();
                    lines.add(new Line(depth, Part.INPUT, said + from, given.origin()));
                } else {
                    String where = isWritten((Worked) value) ? "worked out above" : "worked out below";
                    add(depth, Part.INPUT, said + ", " + where);
                }
            }
        }

        private boolean isWritten(Worked worked) {
            return written.stream()
                    .anyMatch(before -> before == worked
                            || (before.inside() == worked.inside()
                                    && before.name().equals(worked.name())
                                    && before.rule().text().equals(worked.rule().text())));
        }

        private String result(Worked worked) {
            Unit unit = worked.unit();
            String printed = printing.of(unit, worked.inside());
            return Measure.readIn(unit)
                    .map(measure -> measure.unit(printing.units()))
                    .filter(read -> read != unit)
                    .map(read -> printed + " = " + printing.of(read, worked.inside()))
                    .orElse(printed);
        }

        /** A plain number that goes on into another rule keeps the digits with which it does. */
        private String onTheWay(Worked worked) {
            return worked.unit() == Unit.NONE ? with(worked.unit(), worked) : result(worked);
        }

        private static String with(Unit unit, Value value) {
            return putIn(unit, value) + unit.afterNumber();
        }

        private static String putIn(Unit unit, Value value) {
            return PUT_IN.print(unit.fromInside(value.inside()));
        }

        private void add(int depth, Part part, String text) {
            lines.add(new Line(depth, part, text, ""));
        }
    }
}

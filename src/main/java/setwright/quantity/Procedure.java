package setwright.quantity;

import java.util.List;

/**
 * A rule that is a course of steps (an integral, a linear programme, a search) rather than one formula.
 *
 * @param steps the steps in words, one a line
 */
public record Procedure(String name, List<String> steps, Unit unit, Source source) implements Rule {
    public Procedure {
        steps = List.copyOf(steps);
    }

    /** The result of the procedure; {@code deciding} names the deciding case, such as the angle of the peak. */
    public Worked of(double inside, String deciding, Value... from) {
        return new Worked(name, inside, unit, this, List.of(from), deciding);
    }

    @Override
    public String text() {
        return String.join("; ", steps);
    }

    @Override
    public Kind kind() {
        return Kind.PROCEDURE;
    }
}

package setwright.quantity;

import java.util.List;

/** A rule that reads a row of a published or shop table. */
public record Table(String name, String text, Unit unit, Source source) implements Rule {
    /** The value that the named row gives; {@code row} is printed as the deciding case. */
    public Worked of(String row, double inside, Value... keys) {
        return new Worked(name, inside, unit, this, List.of(keys), row);
    }

    @Override
    public Kind kind() {
        return Kind.TABLE;
    }
}

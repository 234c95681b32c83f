package setwright.shop;

import java.util.List;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/**
 * Studs of one thread; a set counts as one.
 *
 * @param thread designation, for instance {@code M12}
 * @param slotWidth of the T-slot whose nuts they fit
 * @param propertyClass for instance {@code 8.8}; {@code not known} where nobody can say
 */
public record Stud(
        String id,
        String name,
        String thread,
        Typed<Length> slotWidth,
        List<Typed<Length>> lengths,
        String propertyClass,
        Kept kept,
        String source)
        implements Owned {
    public Stud {
        lengths = List.copyOf(lengths);
    }

    @Override
    public Kind kind() {
        return Kind.STUD;
    }
}

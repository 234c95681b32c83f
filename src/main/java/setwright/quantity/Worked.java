package setwright.quantity;

import java.util.List;

/**
 * A number that a rule worked out, with what went in.
 *
 * @param inside the number in the unit that the program computes in
 * @param deciding the deciding case in words (the angle of the peak, the contacts that bind, the table row); empty
 *     for a plain formula
 */
public record Worked(String name, double inside, Unit unit, Rule rule, List<Value> from, String deciding)
        implements Value {
    public Worked {
        Quantity.requireFinite(name, inside);
        from = List.copyOf(from);
    }
}

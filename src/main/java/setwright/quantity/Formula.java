package setwright.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A rule written as one formula in the units of its handbook, beside the kernel that computes it in the program's own
 * units. A test evaluates every written formula at random inputs against its kernel.
 *
 * <p>Written with {@code + - * / ^ ( )}, juxtaposition or {@code ·} for a product, {@code π}, {@code √( )}, {@code sin
 * cos tan arccos arcsin arctan ln exp min max}; letters are those of the symbols. A function of an angle takes degrees
 * where an input is in degrees, an inverse one gives degrees where the result is; radians else.
 */
public record Formula(String text, Symbol result, List<Symbol> inputs, ToDoubleFunction<double[]> kernel, Source source)
        implements Rule {
    public Formula {
        inputs = List.copyOf(inputs);
    }

    /** Works the formula out for values given in the order of {@link #inputs()}. */
    public Worked of(Value... values) {
        if (values.length != inputs.size()) {
            throw new IllegalArgumentException(
                    text + " takes " + inputs.size() + " values, not " + values.length + ".");
        }
        double[] inside = new double[values.length];
        List<Value> from = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            inside[i] = values[i].inside();
            from.add(values[i]);
        }
        return new Worked(result.name(), kernel.applyAsDouble(inside), result.unit(), this, from, "");
    }

    @Override
    public String name() {
        return result.name();
    }

    @Override
    public Kind kind() {
        return Kind.FORMULA;
    }
}

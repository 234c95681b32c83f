package setwright.location;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** Growth by warmth. */
public final class Thermal {
    public static final Formula GROWTH = new Formula(
            "g = 1000 a l t",
            symbol("g", "growth", Unit.UM, -10_000, 10_000),
            List.of(
                    symbol("a", "expansion", Unit.PER_KELVIN, 1e-6, 4e-5),
                    symbol("l", "length", Unit.MM, 1, 2000),
                    symbol("t", "warmer by", Unit.KELVIN, -50, 50)),
            v -> growth(v[0], v[1], v[2]),
            Source.of("computed: definition of linear expansion"));

    private Thermal() {}

    /** Millimetres. */
    public static double growth(double expansion, double length, double warmerBy) {
        return expansion * length * warmerBy;
    }
}

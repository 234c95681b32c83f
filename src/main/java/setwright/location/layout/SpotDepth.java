package setwright.location.layout;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** How deep a conical tool goes for the diameter that it shall leave at the top. */
public final class SpotDepth {
    public static final Formula DEPTH = new Formula(
            "t = (D - d) / (2 tan(a / 2))",
            symbol("t", "depth", Unit.MM, 0, 100),
            List.of(
                    symbol("D", "diameter at the top", Unit.MM, 5, 50),
                    symbol("d", "flat of the tip", Unit.MM, 0, 4),
                    symbol("a", "included angle", Unit.DEG, 60, 150)),
            v -> depth(v[0], v[1], v[2]),
            Source.of("computed: geometry of a cone"));

    private SpotDepth() {}

    public static double depth(double top, double tip, double included) {
        return (top - tip) / (2 * StrictMath.tan(included / 2));
    }
}

package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** Where the middle of a round part comes to lie, with D its diameter; sharp edges and true flanks; mm. */
public final class RoundForms {
    private static final Source GEOMETRY = Source.of("computed (a circle on two edges, a circle between two flanks)");
    private static final Symbol DIAMETER = symbol("D", "diameter of the round", Unit.MM, 20, 200);

    /** On the two edges of a slot that is narrower than the round. */
    public static final Formula OVER_SLOT = new Formula(
            "z = √(D^2 - w^2) / 2",
            symbol("z", "middle over the table", Unit.MM, 0, 100),
            List.of(DIAMETER, symbol("w", "width of the slot", Unit.MM, 5, 19)),
            a -> overSlot(a[0], a[1]),
            GEOMETRY);

    /** Between the flanks of a vee. */
    public static final Formula OVER_VERTEX = new Formula(
            "z = D / (2 sin(α / 2))",
            symbol("z", "middle over the sharp bottom of the vee", Unit.MM, 0, 200),
            List.of(DIAMETER, symbol("α", "included angle of the vee", Unit.DEG, 60, 150)),
            a -> overVertex(a[0], a[1]),
            GEOMETRY);

    private RoundForms() {}

    public static double overSlot(double diameter, double width) {
        return StrictMath.sqrt(diameter * diameter - width * width) / 2;
    }

    public static double overVertex(double diameter, double included) {
        return diameter / (2 * StrictMath.sin(included / 2));
    }
}

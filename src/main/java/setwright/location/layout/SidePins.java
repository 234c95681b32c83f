package setwright.location.layout;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** A part against two pins or stops along one side: the farther apart they are, the less it turns. */
public final class SidePins {
    public static final Formula TURN = new Formula(
            "θ = e / s",
            symbol("θ", "turn of the part", Unit.RAD, 0, 1),
            List.of(
                    symbol("e", "error of one pin", Unit.MM, 0, 1),
                    symbol("s", "distance of the pins", Unit.MM, 5, 1000)),
            a -> turn(a[0], a[1]),
            Source.of("computed (small angles)"));

    private SidePins() {}

    public static double turn(double error, double apart) {
        return error / apart;
    }
}

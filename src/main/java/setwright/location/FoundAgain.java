package setwright.location;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** A place that was lost and is found a second time, as when the head of a round column is moved; millimetres. */
public final class FoundAgain {
    public static final Formula ERROR = new Formula(
            "e = 2 a",
            symbol("e", "from the place found first to the place found again", Unit.MM, 0, 1),
            List.of(symbol("a", "half-width of one finding along each axis", Unit.MM, 0.001, 0.5)),
            v -> error(v[0]),
            Source.of("computed: root sum square of two findings along two axes"));

    private FoundAgain() {}

    public static double error(double halfWidth) {
        return 2 * halfWidth;
    }
}

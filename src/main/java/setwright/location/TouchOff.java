package setwright.location;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** Heights found by touching off tools one by one; millimetres. */
public final class TouchOff {
    /** What one touch-off by paper or feeler is out either way (common practice). */
    public static final double EACH = 0.02;

    public static final Formula ERROR = new Formula(
            "e = a √(n)",
            symbol("e", "error of all touch-offs together", Unit.MM, 0, 1),
            List.of(
                    symbol("n", "number of touch-offs", Unit.NONE, 1, 20),
                    symbol("a", "error of one", Unit.MM, 0.001, 0.2)),
            v -> error(v[0], v[1]),
            Source.of("computed: root sum square of equal errors"));

    private TouchOff() {}

    public static double error(double count, double each) {
        return each * StrictMath.sqrt(count);
    }
}

package setwright.location.angle;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** A sine bar: two rolls a known length apart, one of them raised. */
public final class SineBar {
    /** Above it the complement is set: the same error of the stack tilts the bar more and more. */
    public static final double COMPLEMENT = Math.PI / 4;

    /** Above it the bar is not used. */
    public static final double STEEPEST = Math.PI / 3;

    private static final Source GEOMETRY = Source.of("computed: geometry of the sine bar");
    private static final Symbol LENGTH = symbol("L", "length between the rolls", Unit.MM, 50, 500);
    private static final Symbol ANGLE = symbol("a", "angle", Unit.DEG, 0, 60);

    public static final Formula HEIGHT = new Formula(
            "h = L sin(a)",
            symbol("h", "height", Unit.MM, 0, 500),
            List.of(LENGTH, ANGLE),
            v -> height(v[0], v[1]),
            GEOMETRY);
    public static final Formula SENSITIVITY = new Formula(
            "e = 180 / π t / (L cos(a))",
            symbol("e", "error of the angle", Unit.DEG, 0, 1),
            List.of(symbol("t", "error of the stack", Unit.MM, 0.0001, 0.1), LENGTH, ANGLE),
            v -> sensitivity(v[0], v[1], v[2]),
            GEOMETRY);

    private SineBar() {}

    public static double height(double length, double angle) {
        return length * StrictMath.sin(angle);
    }

    /** What an error of the stack tilts the bar by. */
    public static double sensitivity(double error, double length, double angle) {
        return error / (length * StrictMath.cos(angle));
    }
}

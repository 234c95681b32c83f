package setwright.location.gear;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** What shows that the teeth of a spur gear are thin enough: over two pins, or over a span of teeth. No play taken off. */
public final class ToothThickness {
    private static final Symbol MODULE = symbol("m", "module", Unit.MM, 0.2, 20);
    private static final Symbol TEETH = symbol("N", "teeth", Unit.NONE, 6, 400);
    private static final Symbol PRESSURE = symbol("φ", "pressure angle", Unit.DEG, 10, 30);

    /** Flat jaws over k teeth touch along a tangent of the base circle. */
    public static final Formula SPAN = new Formula(
            "W = m cos(φ) ((k - 0.5) π + N (tan(φ) - π φ / 180))",
            symbol("W", "over the span", Unit.MM, 0, 2000),
            List.of(MODULE, PRESSURE, symbol("k", "teeth in the span", Unit.NONE, 1, 50), TEETH),
            v -> span(v[0], v[1], v[2], v[3]),
            Source.of("from memory: base tangent length"));

    /** Pins of this size touch near the pitch circle. */
    public static final Formula PIN = new Formula(
            "d = 1.728 m",
            symbol("d", "pin", Unit.MM, 0, 50),
            List.of(MODULE),
            v -> 1.728 * v[0],
            Source.of("from memory: pins of 1.728 in / P for outside teeth"));

    public static final Procedure OVER_PINS = new Procedure(
            "over two pins",
            List.of(
                    "inv ψ = inv φ + d / (N m cos φ) - π / (2 N): where the pin touches, inv φ = tan φ - φ",
                    "M = N m cos φ / cos ψ + d for an even number of teeth",
                    "M = N m cos φ cos(90° / N) / cos ψ + d for an odd one"),
            Unit.MM,
            Source.of("from memory: measurement over pins"));

    private ToothThickness() {}

    /** The teeth in a span whose jaws touch near the pitch circle. */
    public static int spanTeeth(int teeth, double pressureAngle) {
        return Math.max(1, (int) Math.round(teeth * pressureAngle / Math.PI + 0.5));
    }

    public static double span(double module, double pressureAngle, double spanned, double teeth) {
        return module * StrictMath.cos(pressureAngle) * ((spanned - 0.5) * Math.PI + teeth * involute(pressureAngle));
    }

    /**
     * Over two pins in opposite spaces; of an odd number of teeth in those most nearly opposite.
     *
     * @throws IllegalArgumentException where a pin is so small that it drops to the base circle
     */
    public static double overPins(double module, int teeth, double pressureAngle, double pin) {
        double base = teeth * module * StrictMath.cos(pressureAngle);
        double touch = involute(pressureAngle) + pin / base - Math.PI / (2 * teeth);
        if (touch <= 0) {
            throw new IllegalArgumentException(
                    "The pin drops below the base circle; a larger one is wanted, near " + "1.728 times the module.");
        }
        double across = base / StrictMath.cos(angleOf(touch));
        return (teeth % 2 == 0 ? across : across * StrictMath.cos(Math.PI / (2 * teeth))) + pin;
    }

    static double involute(double angle) {
        return StrictMath.tan(angle) - angle;
    }

    /** Newton from above, where the involute is steep and curves upwards: it cannot overshoot. */
    static double angleOf(double involute) {
        double angle = 1.5;
        for (int i = 0; i < 200; i++) {
            double tan = StrictMath.tan(angle);
            double step = (tan - angle - involute) / (tan * tan);
            angle -= step;
            if (Math.abs(step) < 1e-15) {
                break;
            }
        }
        return angle;
    }
}

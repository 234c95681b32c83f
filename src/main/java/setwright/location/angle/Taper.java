package setwright.location.angle;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** A taper, measured on its diameter; the table or head is set over by half its angle. */
public final class Taper {
    private static final Source GEOMETRY = Source.of("computed: geometry of a cone");
    private static final Symbol LARGE = symbol("D", "large diameter", Unit.MM, 50, 100);
    private static final Symbol SMALL = symbol("d", "small diameter", Unit.MM, 1, 49);
    private static final Symbol LENGTH = symbol("l", "length", Unit.MM, 1, 500);

    public static final Formula PER_UNIT = new Formula(
            "t = (D - d) / l",
            symbol("t", "taper on the diameter for each unit of length", Unit.NONE, 0, 100),
            List.of(LARGE, SMALL, LENGTH),
            v -> perUnit(v[0], v[1], v[2]),
            GEOMETRY);
    public static final Formula HALF_ANGLE = new Formula(
            "a = arctan(t / 2)",
            symbol("a", "angle to the axis", Unit.DEG, 0, 90),
            List.of(symbol("t", "taper on the diameter for each unit of length", Unit.NONE, 0, 10)),
            v -> halfAngle(v[0]),
            GEOMETRY);

    private Taper() {}

    public static double perUnit(double large, double small, double length) {
        return (large - small) / length;
    }

    public static double halfAngle(double perUnit) {
        return StrictMath.atan(perUnit / 2);
    }
}

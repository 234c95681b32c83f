package setwright.location.angle;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** Teeth on the end of a cutter, milled with a single-angle cutter so that their lands stay even. */
public final class EndTeeth {
    public static final Formula ELEVATION = new Formula(
            "a = arccos(tan(360 / n) / tan(b))",
            symbol("a", "elevation of the dividing head", Unit.DEG, 0, 90),
            List.of(symbol("n", "teeth", Unit.NONE, 12, 60), symbol("b", "angle of the cutter", Unit.DEG, 50, 85)),
            v -> elevation(v[0], v[1]),
            Source.of("from memory: Machinery's Handbook; derived again with vectors"));

    private EndTeeth() {}

    /** @throws IllegalArgumentException where the teeth are too few for the cutter */
    public static double elevation(double teeth, double cutter) {
        double cosine = teeth > 4 ? StrictMath.tan(2 * Math.PI / teeth) / StrictMath.tan(cutter) : 2;
        if (!(cosine <= 1)) {
            throw new IllegalArgumentException(
                    "So few teeth cannot be milled with this cutter: take more teeth or a blunter cutter.");
        }
        return StrictMath.acos(cosine);
    }
}

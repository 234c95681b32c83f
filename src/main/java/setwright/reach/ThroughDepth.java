package setwright.reach;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * How far a tool goes through a part, and how far it comes out below; millimetres.
 *
 * @param thickness of the part at the hole
 * @param point what has to pass the far face before the hole has its size: point of a drill, bevel of a reamer, lead of a
 *     tap
 * @param overRun beyond that
 */
public record ThroughDepth(double thickness, double point, double overRun) {
    /** Over-run of a drill beyond its point: common practice. */
    public static final double DRILL_OVER_RUN = 1;
    /** Over-run of a reamer beyond its bevel: common practice. */
    public static final double REAMER_OVER_RUN = 2;

    private static final Source GEOMETRY = Source.of("computed: geometry of a cone");
    private static final Source COMMON = Source.of(
            "common practice: drill its point and 1 mm, reamer its bevel and 2 mm," + " tap its lead and one pitch");
    private static final Symbol THICKNESS = symbol("t", "thickness", Unit.MM, 0.5, 200);

    public static final Formula POINT_LENGTH = new Formula(
            "p = D / (2 tan(w / 2))",
            symbol("p", "length of the point", Unit.MM, 0, 100),
            List.of(symbol("D", "diameter", Unit.MM, 0.2, 75), symbol("w", "point angle", Unit.DEG, 60, 150)),
            v -> pointLength(v[0], v[1]),
            GEOMETRY);
    public static final Formula TRAVEL = new Formula(
            "s = t + p + u",
            symbol("s", "travel", Unit.MM, 0, 500),
            List.of(
                    THICKNESS,
                    symbol("p", "length of point, bevel or lead", Unit.MM, 0, 50),
                    symbol("u", "over-run", Unit.MM, 0, 20)),
            v -> new ThroughDepth(v[0], v[1], v[2]).travel(),
            COMMON);

    /** From the tip to the full diameter; of a spot drill, its depth for the diameter that it leaves. Angle in radians. */
    public static double pointLength(double diameter, double pointAngle) {
        return diameter / (2 * StrictMath.tan(pointAngle / 2));
    }

    public static ThroughDepth drill(double thickness, double diameter, double pointAngle) {
        return new ThroughDepth(thickness, pointLength(diameter, pointAngle), DRILL_OVER_RUN);
    }

    public static ThroughDepth reamer(double thickness, double bevel) {
        return new ThroughDepth(thickness, bevel, REAMER_OVER_RUN);
    }

    /** @param lead threads of lead of the tap */
    public static ThroughDepth tap(double thickness, double lead, double pitch) {
        return new ThroughDepth(thickness, lead * pitch, pitch);
    }

    /** From the top of the part to the lowest place of the tool point. */
    public double travel() {
        return thickness + beyond();
    }

    /** How far the tool point comes out below the part. */
    public double beyond() {
        return point + overRun;
    }

    /** What is left between tool point and whatever lies a gap below the part; negative where they meet. */
    public double spare(double gapUnderPart) {
        return gapUnderPart - beyond();
    }
}

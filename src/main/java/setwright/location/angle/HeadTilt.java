package setwright.location.angle;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** A head that is off square, on purpose or not: what it does to holes, faces and travel. */
public final class HeadTilt {
    private static final Source GEOMETRY = Source.of("computed: geometry of a tilted circle");
    private static final Symbol READING = symbol("e", "reading", Unit.MM, 0.001, 0.5);
    private static final Symbol SWEEP = symbol("s", "diameter of the sweep", Unit.MM, 50, 400);
    private static final Symbol ANGLE = symbol("a", "tilt", Unit.DEG, 0, 80);
    private static final Symbol STROKE = symbol("q", "stroke of the quill", Unit.MM, 0, 200);

    public static final Formula TILT = new Formula(
            "a = arctan(e / s)",
            symbol("a", "tilt", Unit.DEG, 0, 90),
            List.of(READING, SWEEP),
            v -> StrictMath.atan(v[0] / v[1]),
            GEOMETRY);

    /** How hollow a face comes out that a tilted cutter runs over along its tilt. */
    public static final Formula DISH = new Formula(
            "h = (D - √(D^2 - w^2)) / 2 e / s",
            symbol("h", "dish", Unit.MM, 0, 1),
            List.of(
                    symbol("D", "diameter of the cutter", Unit.MM, 50, 200),
                    symbol("w", "width of the cut", Unit.MM, 1, 49),
                    READING,
                    SWEEP),
            v -> dish(v[0], v[1], v[2] / v[3]),
            Source.of("from memory: a tilted face mill leaves a hollow; computed: sagitta of the cut times the tilt"));

    public static final Formula LEAN = new Formula(
            "x = t e / s",
            symbol("x", "lean of a hole over its depth", Unit.MM, 0, 1),
            List.of(symbol("t", "depth of the hole", Unit.MM, 1, 200), READING, SWEEP),
            v -> v[0] * v[1] / v[2],
            GEOMETRY);

    /** How much deeper the tool goes, measured square to the table. */
    public static final Formula DOWN = new Formula(
            "z = q cos(a)",
            symbol("z", "travel square to the table", Unit.MM, 0, 200),
            List.of(STROKE, ANGLE),
            v -> v[0] * StrictMath.cos(v[1]),
            GEOMETRY);

    /** How far the table has to follow, or the hole walks. */
    public static final Formula ACROSS = new Formula(
            "x = q sin(a)",
            symbol("x", "travel along the table", Unit.MM, 0, 200),
            List.of(STROKE, ANGLE),
            v -> v[0] * StrictMath.sin(v[1]),
            GEOMETRY);

    /** How far the quill goes for a depth square to the table. */
    public static final Formula QUILL = new Formula(
            "q = z / cos(a)",
            symbol("q", "travel of the quill", Unit.MM, 0, 2000),
            List.of(symbol("z", "depth square to the table", Unit.MM, 0, 200), ANGLE),
            v -> v[0] / StrictMath.cos(v[1]),
            GEOMETRY);

    private HeadTilt() {}

    /** @param slope reading over sweep */
    public static double dish(double diameter, double width, double slope) {
        return (diameter - StrictMath.sqrt(diameter * diameter - width * width)) / 2 * slope;
    }
}

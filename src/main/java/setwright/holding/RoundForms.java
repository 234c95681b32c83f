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

    /** On the 45° flanks of the chamfers along the edges of a slot. */
    public static final Formula OVER_FLANKS = new Formula(
            "z = (√(2) D - w) / 2 - c",
            symbol("z", "middle over the table", Unit.MM, -100, 150),
            List.of(
                    DIAMETER,
                    symbol("w", "width of the slot", Unit.MM, 5, 19),
                    symbol("c", "chamfer of its edges", Unit.MM, 0, 10)),
            a -> overFlanks(a[0], a[1], a[2]),
            Source.of("computed: a circle that touches two lines at 45°"));

    /** On the lower edges of the chamfers. */
    public static final Formula OVER_LOWER_EDGES = new Formula(
            "z = √(D^2 - w^2) / 2 - c",
            symbol("z", "middle over the table", Unit.MM, -100, 150),
            List.of(
                    DIAMETER,
                    symbol("w", "width of the slot", Unit.MM, 5, 19),
                    symbol("c", "chamfer of its edges", Unit.MM, 0, 10)),
            a -> overSlot(a[0], a[1]) - a[2],
            GEOMETRY);

    /** The highest line of a round over the sharp bottom of its vee. */
    public static final Formula TOP_OVER_VERTEX = new Formula(
            "t = z + D / 2",
            symbol("t", "top over the sharp bottom of the vee", Unit.MM, 0, 300),
            List.of(symbol("z", "middle over the sharp bottom of the vee", Unit.MM, 0, 200), DIAMETER),
            a -> a[0] + a[1] / 2,
            GEOMETRY);

    /** How far a round sinks below the table that it lies in a slot of. */
    public static final Formula LOWEST = new Formula(
            "s = D / 2 - z",
            symbol("s", "lowest line below the table", Unit.MM, 0, 100),
            List.of(DIAMETER, symbol("z", "middle over the table", Unit.MM, 0, 100)),
            a -> a[0] / 2 - a[1],
            GEOMETRY);

    /** Between the flanks of a vee that ends at its mouth. */
    public static final Formula OVER_MOUTH = new Formula(
            "z = D / (2 sin(α / 2)) - B / (2 tan(α / 2))",
            symbol("z", "middle over the mouth of the vee", Unit.MM, -200, 200),
            List.of(
                    DIAMETER,
                    symbol("α", "included angle of the vee", Unit.DEG, 60, 150),
                    symbol("B", "width of the mouth", Unit.MM, 5, 200)),
            a -> overMouth(a[0], a[1], a[2]),
            GEOMETRY);

    /** Between the normals of the two edges of a slot: a round bears as in a vee of 180 degrees less this. */
    public static final Formula BETWEEN_NORMALS = new Formula(
            "β = 2 arcsin(w / D)",
            symbol("β", "angle between the normals", Unit.RAD, 0, 3.2),
            List.of(symbol("w", "width of the slot", Unit.MM, 5, 19), DIAMETER),
            a -> betweenNormals(a[0], a[1]),
            GEOMETRY);

    private RoundForms() {}

    public static double overMouth(double diameter, double included, double mouth) {
        return overVertex(diameter, included) - mouth / (2 * StrictMath.tan(included / 2));
    }

    public static double betweenNormals(double width, double diameter) {
        return 2 * StrictMath.asin(width / diameter);
    }

    public static double overFlanks(double diameter, double width, double chamfer) {
        return (StrictMath.sqrt(2) * diameter - width) / 2 - chamfer;
    }

    /** Where a round bears on a slot with chamfered edges. */
    public enum Bearing {
        UPPER_EDGES,
        FLANKS,
        LOWER_EDGES
    }

    /** A round is steeper than 45° beyond 0.707 of its diameter. */
    public static Bearing bearing(double diameter, double width, double chamfer) {
        double steep = diameter * StrictMath.sqrt(0.5);
        if (width + 2 * chamfer <= steep) {
            return Bearing.UPPER_EDGES;
        }
        return width >= steep ? Bearing.LOWER_EDGES : Bearing.FLANKS;
    }

    public static double overSlot(double diameter, double width) {
        return StrictMath.sqrt(diameter * diameter - width * width) / 2;
    }

    public static double overVertex(double diameter, double included) {
        return diameter / (2 * StrictMath.sin(included / 2));
    }
}

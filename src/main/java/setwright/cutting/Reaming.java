package setwright.cutting;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Band;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/**
 * Reaming. The torque is an estimate: the specific force of the material on the thin ring that the bevels take off,
 * without the rubbing of the margins; no published example was found to check it against. Kernels in mm, N/mm², N·mm.
 */
public final class Reaming {
    private static final Symbol FEED = symbol("f", "feed per turn", Unit.MM_PER_REV, 0.05, 2);

    public static final Formula CHIP = new Formula(
            "h = f sin(κ) / z",
            symbol("h", "chip thickness", Unit.MM, 0.005, 1),
            List.of(
                    FEED,
                    symbol("κ", "angle of the bevel to the axis", Unit.DEG, 5, 90),
                    symbol("z", "teeth", Unit.NONE, 1, 12)),
            a -> chip(a[0], a[1], a[2]),
            Source.of("computed: geometry of the bevel"));

    public static final Formula TORQUE = new Formula(
            "M = (D^2 - d^2) f kc K / 8000",
            symbol("M", "torque", Unit.N_M, 0.001, 500),
            List.of(
                    symbol("D", "reamer diameter", Unit.MM, 1, 60),
                    symbol("d", "hole before reaming", Unit.MM, 1, 60),
                    FEED,
                    symbol("kc", "specific cutting force", Unit.N_PER_MM2, 100, 20000),
                    symbol("K", "correction", Unit.NONE, 0.5, 3)),
            a -> Drilling.torqueByKc(new Drilling.Ring(a[0], a[1]), a[2], a[3] * a[4]),
            Source.of("common practice: the kc form of drilling on the ring that the reamer takes off"));

    /** Cutting speed beside that of a drill of the same size. */
    public static final Table SPEED_RATIO = new Table(
            "reaming to drilling speed",
            "a third to two thirds, half expected",
            Unit.NONE,
            Source.of(
                    "US War Department TM 1-420 p.56 (half); a shop text (a third to a half); a reamer-maker's table of"
                            + " speeds (about two thirds)"));

    public static final Band SPEED_TO_DRILL = new Band(1.0 / 3, 0.5, 2.0 / 3);

    /** Feed per turn beside that of a drill of the same size (common practice). */
    public static final Band FEED_TO_DRILL = new Band(2, 2.5, 3);

    /** Stock on the diameter. */
    public static final Table STOCK = new Table(
            "stock for reaming",
            "0.090-0.170 in: 0.005-0.010; 0.171-0.280 in: 0.008-0.012; 0.281-0.880 in: 0.010-0.016; 0.881-2.50 in:"
                    + " 0.015-0.030 in on the diameter",
            Unit.MM,
            Source.of("reamer-maker's chart of reaming stock"));

    private Reaming() {}

    /** Torque of a sharp reamer, N·mm; the bevel of machine reamers is mostly at 45 degrees. */
    public static double torque(Reamer reamer, double hole, double feed, Kienzle material) {
        double kc = material.specificForce(chip(feed, reamer.bevelAngle(), reamer.teeth()));
        return Drilling.torqueByKc(new Drilling.Ring(reamer.diameter(), hole), feed, kc);
    }

    /**
     * A reamer's cutting end.
     *
     * @param bevelAngle of the bevel to the axis, rad
     */
    public record Reamer(double diameter, int teeth, double bevelAngle) {}

    public static double chip(double feed, double bevelAngle, double teeth) {
        return feed * StrictMath.sin(bevelAngle) / teeth;
    }

    /** Stock on the diameter for a finished hole, mm; smaller and larger holes take the nearest row of the chart. */
    public static Band stock(double hole) {
        if (hole < Unit.IN.toInside(0.1705)) {
            return inches(0.005, 0.010);
        }
        if (hole < Unit.IN.toInside(0.2805)) {
            return inches(0.008, 0.012);
        }
        if (hole < Unit.IN.toInside(0.8805)) {
            return inches(0.010, 0.016);
        }
        return inches(0.015, 0.030);
    }

    private static Band inches(double low, double high) {
        return new Band(Unit.IN.toInside(low), Unit.IN.toInside((low + high) / 2), Unit.IN.toInside(high));
    }
}

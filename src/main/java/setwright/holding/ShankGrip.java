package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Band;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;

/**
 * What a collet holds a smooth shank with. The force is that of drawbar or nut, and so the same for every shank; against
 * turning it works on half the diameter.
 */
public final class ShankGrip {
    public static final Table R8_COLLET = new Table(
            "pull-out force of an R8 collet",
            "600 to 3750 lbf, by cleanness and drawbar alone; expected between them in ratio",
            Unit.N,
            Source.of("technical document Preventing Collet Slip (docslib.org/doc/4940811/preventing-collet-slip)"));

    public static final Table COLLET_CHUCK = new Table(
            "holding force of a collet chuck",
            "8 to 25 kN with the nut at its torque",
            Unit.N,
            Source.of("from memory: slips at 50 to 100 N·m on 12 mm and 100 to 250 N·m on 20 mm, order of magnitude"));

    public static final Table DRILL_CHUCK = new Table(
            "grip of a drill chuck",
            "3 to 9 kN, tightened at all its holes or by its own wedges",
            Unit.N,
            Source.of("from memory: chucks of 13 mm slip at about 20 to 55 N·m on 12 mm, order of magnitude"));

    public static final Formula SLIP_TORQUE = new Formula(
            "M = F d / 2",
            symbol("M", "torque at which a shank slips", Unit.N_MM, 0, 10000000),
            List.of(symbol("F", "holding force", Unit.N, 100, 100000), symbol("d", "shank diameter", Unit.MM, 1, 50)),
            a -> slipTorque(a[0], a[1]),
            Source.of("computed: friction alike along and round the shank"));

    private static final double R8_LEAST = 600;
    private static final double R8_GREATEST = 3750;
    private static final double CHUCK_LEAST = 8000;
    private static final double CHUCK_GREATEST = 25000;
    private static final double DRILL_CHUCK_LEAST = 3000;
    private static final double DRILL_CHUCK_GREATEST = 9000;

    private ShankGrip() {}

    /** N. */
    public static Band r8Collet() {
        return between(Unit.LBF.toInside(R8_LEAST), Unit.LBF.toInside(R8_GREATEST));
    }

    /** N. */
    public static Band colletChuck() {
        return between(CHUCK_LEAST, CHUCK_GREATEST);
    }

    /** N. */
    public static Band drillChuck() {
        return between(DRILL_CHUCK_LEAST, DRILL_CHUCK_GREATEST);
    }

    /** Half the diameter is the lever, N·mm. */
    public static double slipTorque(double holdingForce, double shank) {
        return holdingForce * shank / 2;
    }

    private static Band between(double low, double high) {
        return new Band(low, Math.sqrt(low * high), high);
    }
}

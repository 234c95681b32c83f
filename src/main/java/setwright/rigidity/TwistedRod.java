package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Band;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Table;
import setwright.quantity.Unit;
import setwright.shop.ToolMaterial;

/** What a drill or a tap bears before it twists off or buckles: a fluted rod counted as a thinner round one. mm, N, N·mm. */
public final class TwistedRod {
    /** Of a drill's diameter. */
    public static final double DRILL = 0.7;

    /** Of a tap's major diameter. */
    public static final double TAP = 0.6;

    public static final Table SHEAR_STRENGTH = new Table(
            "shear strength",
            "high speed steel 800 N/mm², carbide 600 N/mm², 0.7 of it at worst",
            Unit.N_PER_MM2,
            Source.of("from memory: taps of high speed steel twist off at about 1 N·m (M3), 7.5 (M6) and 18 (M8)"));

    public static final Formula TWISTS_OFF = new Formula(
            "M = π τ (k d)^3 / 16000",
            symbol("M", "torque at which it twists off", Unit.N_M, 0, 100000),
            List.of(
                    symbol("τ", "shear strength", Unit.N_PER_MM2, 100, 2000),
                    symbol("k", "round rod to fluted rod", Unit.NONE, 0.4, 1),
                    symbol("d", "diameter", Unit.MM, 0.3, 60)),
            a -> twistsOff(a[0], a[1] * a[2]),
            Source.of("from memory: textbooks on strength of materials, round rods in torsion"));

    private static final double AT_WORST = 0.7;

    private TwistedRod() {}

    /** @param round diameter of the round rod that it counts as */
    public static double twistsOff(double strength, double round) {
        return Math.PI / 16 * strength * round * round * round;
    }

    /** N/mm². */
    public static Band strength(ToolMaterial material) {
        double expected = switch (material) {
            case HSS -> 800;
            case CARBIDE -> 600;
        };
        return new Band(AT_WORST * expected, expected, expected);
    }
}

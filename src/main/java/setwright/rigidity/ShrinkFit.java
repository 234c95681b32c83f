package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * A shank shrunk into its holder, by Lamé's thick-walled ring on a solid shank. Lengths in mm, stress in N/mm².
 *
 * @param shank diameter
 * @param outside of the holder
 * @param grip length that is gripped
 * @param interference on the diameter
 */
public record ShrinkFit(double shank, double outside, double grip, double interference) {
    private static final Source LAME = Source.of("from memory: Lamé, thick-walled cylinders");
    private static final Symbol SHANK = symbol("d", "shank diameter", Unit.MM, 3, 30);

    /** For a steel holder with Poisson's ratio 0.3. */
    public static final Formula PRESSURE = new Formula(
            "p = i / (d (((D^2 + d^2) / (D^2 - d^2) + 0.3) / H + (1 - v) / S))",
            symbol("p", "pressure in the joint", Unit.N_PER_MM2, 0, 2000),
            List.of(
                    symbol("i", "interference on the diameter", Unit.MM, 0.001, 0.05),
                    SHANK,
                    symbol("D", "outside diameter of the holder", Unit.MM, 31, 80),
                    symbol("H", "modulus of the holder", Unit.N_PER_MM2, 190000, 220000),
                    symbol("S", "modulus of the shank", Unit.N_PER_MM2, 190000, 650000),
                    symbol("v", "Poisson's ratio of the shank", Unit.NONE, 0.2, 0.3)),
            a -> new ShrinkFit(a[1], a[2], 1, a[0]).pressure(a[3], a[4], a[5]),
            LAME);

    public static final Formula SLIPS = new Formula(
            "M = μ p π d^2 l / 2",
            symbol("M", "torque at which it slips", Unit.N_MM, 0, 10000000),
            List.of(
                    symbol("μ", "friction", Unit.NONE, 0.05, 0.3),
                    symbol("p", "pressure in the joint", Unit.N_PER_MM2, 1, 500),
                    SHANK,
                    symbol("l", "gripped length", Unit.MM, 5, 60)),
            a -> new ShrinkFit(a[2], 2 * a[2], a[3], 0).slips(a[0], a[1]),
            LAME);

    private static final double POISSON = 0.3;

    /** N/mm², with the moduli of holder and shank and Poisson's ratio of the shank. */
    public double pressure(double holder, double tool, double poisson) {
        double square = outside * outside;
        double ring = (square + shank * shank) / (square - shank * shank) + POISSON;
        return interference / (shank * (ring / holder + (1 - poisson) / tool));
    }

    /** Torque at which it slips, N·mm. */
    public double slips(double friction, double pressure) {
        return pullsOut(friction, pressure) * shank / 2;
    }

    /** Pull at which it comes out, N. */
    public double pullsOut(double friction, double pressure) {
        return friction * pressure * Math.PI * shank * grip;
    }
}

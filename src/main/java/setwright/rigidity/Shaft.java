package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/** A bar on two supports with a force between them. Kernels in mm, N, N/mm², mm⁴. */
public final class Shaft {
    /** Round, on two supports, the force midway. */
    public static final Formula MIDWAY = new Formula(
            "δ = 64 F L^3 / (48 π E d^4)",
            symbol("δ", "deflection midway", Unit.MM, 0, 5),
            List.of(
                    symbol("F", "force midway", Unit.N, 1, 20000),
                    symbol("L", "between the supports", Unit.MM, 1, 2000),
                    symbol("E", "modulus of elasticity", Unit.N_PER_MM2, 30000, 250000),
                    symbol("d", "diameter", Unit.MM, 1, 200)),
            a -> midway(a[0], a[1], a[2], Rod.inertia(a[3])),
            Source.of("from memory: textbooks on strength of materials"));

    private Shaft() {}

    /** Both ends resting, F L³ / (48 E I), mm. */
    public static double midway(double force, double span, double modulus, double inertia) {
        return force * span * span * span / (48 * modulus * inertia);
    }

    /** Both ends fixed, F L³ / (192 E I), mm. */
    public static double fixedMidway(double force, double span, double modulus, double inertia) {
        return midway(force, span, modulus, inertia) / 4;
    }
}

package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * Flat plates under a force at one place, by published coefficients. Kernels in mm, N, N/mm².
 *
 * <p>Validity: no thicker than a quarter of the shorter side, no deeper bent than half the thickness, Poisson's ratio 0.3.
 */
public final class Plate {
    private static final Source ROARK = Source.of("Roark's Formulas for Stress and Strain, 7th ed., Table 11.4");
    private static final Symbol GIVES = symbol("y", "deflection of the plate", Unit.MM, 0, 5);
    private static final Symbol FORCE = symbol("W", "force", Unit.N, 1, 20000);
    private static final Symbol MODULUS = symbol("E", "modulus of elasticity", Unit.N_PER_MM2, 30000, 250000);
    private static final Symbol THICKNESS = symbol("t", "thickness", Unit.MM, 0.5, 100);
    private static final double POISSON = 0.3;

    /** Held along all four edges and pressed in its middle. */
    public static final Formula HELD_ALL_ROUND = new Formula(
            "y = α W b^2 / (E t^3)",
            GIVES,
            List.of(
                    symbol("α", "coefficient of the plate", Unit.NONE, 0.06, 0.19),
                    FORCE,
                    symbol("b", "shorter side", Unit.MM, 1, 1000),
                    MODULUS,
                    THICKNESS),
            a -> heldAllRound(a[0], a[1], a[2], a[3], a[4]),
            ROARK);

    /** On two edges, or standing out from one: D = E t³ / (12 (1 - 0.3²)). */
    public static final Formula SPANNING = new Formula(
            "y = 10.92 c W L^2 / (E t^3)",
            GIVES,
            List.of(
                    symbol("c", "coefficient of the plate", Unit.NONE, 0.01, 4),
                    FORCE,
                    symbol("L", "span, or length that stands out", Unit.MM, 1, 1000),
                    MODULUS,
                    THICKNESS),
            a -> spanning(a[0], a[1], a[2], a[3], a[4]),
            Source.of("from memory: textbooks on plates; Poisson's ratio 0.3"));

    private Plate() {}

    /** Mm, of a plate held along all edges. */
    public static double heldAllRound(double alpha, double force, double side, double modulus, double thickness) {
        return alpha * force * side * side / (modulus * thickness * thickness * thickness);
    }

    /** Mm, of a plate on two parallels or beyond the jaws. */
    public static double spanning(double c, double force, double span, double modulus, double thickness) {
        double stiffness = modulus * thickness * thickness * thickness / (12 * (1 - POISSON * POISSON));
        return c * force * span * span / stiffness;
    }

    /** The coefficient that the beam formula F L³ / (n E I) stands for where a plate is narrow. */
    static double beam(double n, double widthOverSpan) {
        return 1 / ((1 - POISSON * POISSON) * n * widthOverSpan);
    }
}

package setwright.rigidity.stability;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** The smallest stable depth in closed form where the tip gives in one direction only. Kernels in mm, N, N/mm, N/mm². */
public final class OneDirection {
    private static final Symbol DEPTH = symbol("a", "smallest stable depth", Unit.MM, 0, 100);
    private static final Symbol STIFFNESS = symbol("k", "stiffness at the tip", Unit.N_PER_MM, 100, 1e6);
    private static final Symbol DAMPING = symbol("ζ", "damping ratio", Unit.NONE, 0.005, 0.2);

    /** An edge that always cuts, straight into the direction that gives. */
    public static final Formula ALWAYS_CUTTING = new Formula(
            "a = 2 k ζ (1 + ζ) / Kf",
            DEPTH,
            List.of(STIFFNESS, DAMPING, symbol("Kf", "specific force along it", Unit.N_PER_MM2, 100, 10000)),
            v -> alwaysCutting(v[0], v[1], v[2]),
            Source.of("from memory: Tlusty; as in a published implementation with its figure"));

    /** A full slot with the tip giving along the feed or across it. */
    public static final Formula SLOT = new Formula(
            "a = 8 k ζ (1 + ζ) / (N Kt Kr)",
            DEPTH,
            List.of(
                    STIFFNESS,
                    DAMPING,
                    symbol("N", "teeth", Unit.NONE, 1, 12),
                    symbol("Kt", "specific tangential force", Unit.N_PER_MM2, 100, 10000),
                    symbol("Kr", "radial to tangential force", Unit.NONE, 0.05, 1)),
            v -> slot(v[0], v[1], v[2] * v[3] * v[4]),
            Source.of("computed: the zero-order solution for one direction, where αxx = αyy = -π Kr"));

    private OneDirection() {}

    public static double alwaysCutting(double stiffness, double damping, double force) {
        return 2 * stiffness * damping * (1 + damping) / force;
    }

    /** @param forces N Kt Kr together, N/mm² */
    public static double slot(double stiffness, double damping, double forces) {
        return 8 * stiffness * damping * (1 + damping) / forces;
    }
}

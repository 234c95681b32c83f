package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/** Round rods: bending, stress, buckling. Kernels in mm, N, N·mm, N/mm². */
public final class Rod {
    private static final Source BEAMS =
            Source.of("Isakov, Boring: Calculating deflection, Cutting Tool Engineering, July 2019, p.75");
    private static final Source TEXTBOOKS = Source.of("from memory: textbooks on strength of materials");
    private static final Symbol FORCE = symbol("F", "force", Unit.N, 1, 20000);
    private static final Symbol LENGTH = symbol("L", "length that stands out", Unit.MM, 1, 400);
    private static final Symbol DIAMETER = symbol("d", "diameter", Unit.MM, 0.5, 80);
    private static final Symbol MODULUS = symbol("E", "modulus of elasticity", Unit.N_PER_MM2, 30000, 700000);
    private static final Symbol BENDING = symbol("σ", "bending stress", Unit.N_PER_MM2, 0, 5000);
    private static final Symbol TORSION = symbol("τ", "torsion stress", Unit.N_PER_MM2, 0, 5000);

    /** Of a rod of one diameter that is held at one end and loaded at the other. */
    public static final Formula DEFLECTION = new Formula(
            "δ = 64 F L^3 / (3 π E d^4)",
            symbol("δ", "deflection", Unit.MM, 0, 5),
            List.of(FORCE, LENGTH, MODULUS, DIAMETER),
            a -> deflection(a[0], a[1], a[2], a[3]),
            BEAMS);

    public static final Formula BENDING_STRESS = new Formula(
            "σ = 32 F L / (π d^3)",
            BENDING,
            List.of(FORCE, LENGTH, DIAMETER),
            a -> bending(a[0] * a[1], a[2]),
            TEXTBOOKS);

    public static final Formula TORSION_STRESS = new Formula(
            "τ = 16000 M / (π d^3)",
            TORSION,
            List.of(symbol("M", "torque", Unit.N_M, 0.01, 500), DIAMETER),
            a -> torsion(a[0], a[1]),
            TEXTBOOKS);

    /** By distortion energy; for a brittle edge it lies on the careful side of the largest normal stress. */
    public static final Formula COMBINED_STRESS = new Formula(
            "S = √(σ^2 + 3 τ^2)",
            symbol("S", "combined stress", Unit.N_PER_MM2, 0, 10000),
            List.of(BENDING, TORSION),
            a -> combined(a[0], a[1]),
            TEXTBOOKS);

    /** Of a straight rod; a drill's flutes leave less, so that the full diameter is an upper bound. */
    public static final Formula BUCKLING = new Formula(
            "F = C π E d^4 / (64 L^2)",
            symbol("F", "buckling force", Unit.N, 1, 1000000),
            List.of(symbol("C", "factor of the ends", Unit.NONE, 2, 40), MODULUS, DIAMETER, LENGTH),
            a -> buckling(a[0], a[1], a[2], a[3]),
            Source.of("from memory: Timoshenko & Gere, Euler columns"));

    private Rod() {}

    /** Second moment of area of a circle, π d⁴ / 64, mm⁴. */
    public static double inertia(double diameter) {
        return Math.PI / 64 * diameter * diameter * diameter * diameter;
    }

    public static double deflection(double force, double length, double modulus, double diameter) {
        return force * length * length * length / (3 * modulus * inertia(diameter));
    }

    public static double bending(double moment, double diameter) {
        return 32 * moment / (Math.PI * diameter * diameter * diameter);
    }

    public static double torsion(double torque, double diameter) {
        return 16 * torque / (Math.PI * diameter * diameter * diameter);
    }

    public static double combined(double bending, double torsion) {
        return Math.sqrt(bending * bending + 3 * torsion * torsion);
    }

    public static double buckling(double endFactor, double modulus, double diameter, double length) {
        return endFactor * modulus * inertia(diameter) / (length * length);
    }

    /** How the ends of a column are held. */
    public enum Ends {
        /** A drill whose point has not bitten yet. */
        FIXED_FREE(2.467),
        PINNED_PINNED(9.870),
        /** A drill in its chuck whose point is led by the hole. */
        FIXED_PINNED(20.19),
        FIXED_FIXED(39.48);

        private final double factor;

        Ends(double factor) {
            this.factor = factor;
        }

        /** C of C E I / L². */
        public double factor() {
            return factor;
        }
    }
}

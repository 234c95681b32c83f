package setwright.holding;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Symbol;
import setwright.quantity.Unit;

/**
 * From the torque at a nut or handle to the force of its screw, by the power screw equations. T torque, F force, K nut
 * factor, d diameter; for a power screw D its mean diameter, L its lead, f the friction of the flanks, α their angle, c
 * the friction of the collar and e its mean diameter.
 */
public final class ScrewForms {
    private static final Source POWER_SCREW =
            Source.of("Mott, Machine Elements in Mechanical Design 4th ed. p. 703 (power screws)");
    private static final Symbol TORQUE = symbol("T", "torque", Unit.N_M, 0, 500);
    private static final Symbol MEAN = symbol("D", "mean diameter", Unit.MM, 5, 100);
    private static final Symbol LEAD = symbol("L", "lead", Unit.MM, 0.5, 12);
    private static final Symbol FRICTION = symbol("f", "friction", Unit.NONE, 0.05, 0.5);
    private static final Symbol FLANK = symbol("α", "flank angle", Unit.DEG, 0, 30);
    private static final Symbol COLLAR_FRICTION = symbol("c", "collar friction", Unit.NONE, 0, 0.5);
    private static final Symbol COLLAR = symbol("e", "collar mean diameter", Unit.MM, 0, 100);

    /** The preload of a stud from the torque at its nut. */
    public static final Formula PRELOAD = new Formula(
            "F = 1000 T / (K d)",
            symbol("F", "preload", Unit.N, 0, 1e6),
            List.of(TORQUE, symbol("K", "nut factor", Unit.NONE, 0.1, 0.4), symbol("d", "diameter", Unit.MM, 3, 36)),
            a -> preload(a[0], a[1], a[2]),
            Source.of("T = K d F as in SAE J429 tightening tables (K = 0.20)"));

    /** The force of a vise from the torque at its handle, with the collar the screw pushes on. */
    public static final Formula VISE_FORCE = new Formula(
            "F = 2000 T / (D (cos(α) L / (π D) + f) / (cos(α) - f L / (π D)) + c e)",
            symbol("F", "force", Unit.N, 0, 1e7),
            List.of(TORQUE, MEAN, LEAD, FRICTION, FLANK, COLLAR_FRICTION, COLLAR),
            a -> force(a[0], new Screw(a[1], a[2], a[3], a[4]), a[5], a[6]),
            POWER_SCREW);

    private ScrewForms() {}

    /** Preload (N) from torque (N·mm), nut factor and diameter (mm). */
    public static double preload(double torque, double nutFactor, double diameter) {
        return torque / (nutFactor * diameter);
    }

    /** Force (N) from torque (N·mm) and the friction and mean diameter (mm) of the collar. */
    public static double force(double torque, Screw screw, double collarFriction, double collarDiameter) {
        return torque / (raisingArm(screw) + collarFriction * collarDiameter / 2);
    }

    /** Torque for each newton that the screw is driven forward against, N·mm; the collar comes on top. */
    public static double raisingArm(Screw screw) {
        double slant = StrictMath.cos(screw.flankAngle());
        return screw.meanDiameter()
                / 2
                * (slant * screw.rise() + screw.friction())
                / (slant - screw.friction() * screw.rise());
    }

    /** Torque for each newton that the screw is let go against, N·mm. */
    public static double releasingArm(Screw screw) {
        double slant = StrictMath.cos(screw.flankAngle());
        return screw.meanDiameter()
                / 2
                * (screw.friction() - slant * screw.rise())
                / (slant + screw.friction() * screw.rise());
    }

    /** What of the work at the handle reaches the jaws, from force (N), lead (mm) and torque (N·mm). */
    public static double efficiency(double force, double lead, double torque) {
        return force * lead / (2 * Math.PI * torque);
    }

    /** Force (N) from torque (N·mm), lead (mm) and efficiency. */
    public static double forceByEfficiency(double torque, double lead, double efficiency) {
        return 2 * Math.PI * efficiency * torque / lead;
    }
}

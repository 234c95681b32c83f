package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.List;
import setwright.quantity.Band;
import setwright.quantity.Formula;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * A tool on the springs of its clamp and its machine. Places are measured from the holder's face, mm. Short tools are
 * ruled by clamp and machine, long ones by themselves.
 */
public record MountedTool(ToolBeam beam, Springs springs) {
    public static final Procedure DEFLECTION = new Procedure(
            "deflection",
            List.of(
                    "bending of the tool as a stepped rod: sum over its lengths of the integral of (x - s) (a - s) / (E I)",
                    "and the clamp sideways, F / kt",
                    "and the clamp tilting, F a x / kθ",
                    "and the holder as a steel rod on a taper that tilts",
                    "and all behind it, F / km"),
            Unit.MM,
            Source.of(
                    "Kops & Vo 1990 (abstract): rod of 0.8 times the cutting diameter; beam formula as in Isakov, Cutting"
                            + " Tool Engineering, July 2019, p.75"));

    public static final Procedure STRESS = new Procedure(
            "stress in the tool",
            List.of(
                    "bending 32 F (a - s) / (π d³) and torsion 16 M / (π d³) where each length of the tool begins",
                    "together √(σ² + 3 τ²)",
                    "the greatest of them; flutes count as a rod of the core ratio times the diameter"),
            Unit.N_PER_MM2,
            Source.of("common practice: the tool as a stepped rod"));

    /** What a face is left out by when the tool leans: its edge a radius away rises and dips by that much. */
    public static final Formula FACE_LEAN = new Formula(
            "u = i D / 2",
            symbol("u", "face left out by the lean of the tool", Unit.MM, 0, 5),
            List.of(symbol("i", "lean of the tip", Unit.RAD, 0, 0.1), symbol("D", "cutter diameter", Unit.MM, 1, 200)),
            a -> faceLean(a[0], a[1]),
            Source.of("computed: geometry of a leaning disc"));

    /** How far the tool gives at a place for each newton at another. */
    public Compliance compliance(double place, double load) {
        return new Compliance(
                beam.compliance(place, load),
                1 / springs.clampShift(),
                place * load / springs.clampTilt(),
                1 / springs.machine(),
                springs.seat().compliance(place, load));
    }

    /** Deflection of the tip under a force at a place, mm. */
    public double tipDeflection(double force, double load) {
        return force * compliance(beam.stickOut(), load).total();
    }

    /** Deflection where the force acts, mm. */
    public double deflectionAtLoad(double force, double load) {
        return force * compliance(load, load).total();
    }

    /** The same where the machine's stiffness is known as a band only; a soft machine gives the high end. */
    public Band deflectionAtLoad(double force, double load, Band machine) {
        return new Band(
                on(machine.high()).deflectionAtLoad(force, load),
                on(machine.expected()).deflectionAtLoad(force, load),
                on(machine.low()).deflectionAtLoad(force, load));
    }

    /** How far the tip leans under a force at a place, rad. */
    public double tipSlope(double force, double load) {
        return force
                * (beam.slope(beam.stickOut(), load)
                        + load / springs.clampTilt()
                        + springs.seat().slope(load));
    }

    /** Deflection of the tip where the machine's stiffness is known as a band only; a soft machine gives the high end. */
    public Band tipDeflection(double force, double load, Band machine) {
        return new Band(
                on(machine.high()).tipDeflection(force, load),
                on(machine.expected()).tipDeflection(force, load),
                on(machine.low()).tipDeflection(force, load));
    }

    private MountedTool on(double machine) {
        return new MountedTool(beam, springs.withMachine(machine));
    }

    /** Lean in radians, diameter in mm; mm. */
    public static double faceLean(double lean, double diameter) {
        return lean * diameter / 2;
    }
}

package setwright.rigidity;

import static setwright.quantity.Symbol.symbol;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Formula;
import setwright.quantity.Source;
import setwright.quantity.Unit;

/**
 * A tool held rigidly at one end, in lengths of different diameter from the holder to the tip. Places are measured from
 * the holder's face, mm.
 *
 * <p>Shear is left out; below a stick-out of twice the diameter it would count, but there clamp and machine rule.
 *
 * @param sections from the holder to the tip
 * @param modulus of elasticity, N/mm²
 */
public record ToolBeam(List<BeamSection> sections, double modulus) {
    /** A fluted tip on a plain shank with the force at the tip, on a rigid holder. */
    public static final Formula TIP_DEFLECTION = new Formula(
            "δ = 64 F (min(b, L)^3 / (q d)^4 + (L^3 - min(b, L)^3) / d^4) / (3 π E)",
            symbol("δ", "deflection at the tip", Unit.MM, 0, 5),
            List.of(
                    symbol("F", "force at the tip", Unit.N, 1, 20000),
                    symbol("L", "stick-out", Unit.MM, 1, 400),
                    symbol("b", "flute length", Unit.MM, 0.5, 400),
                    symbol("d", "shank diameter", Unit.MM, 0.5, 80),
                    symbol("q", "core ratio", Unit.NONE, 0.5, 1),
                    symbol("E", "modulus of elasticity", Unit.N_PER_MM2, 30000, 700000)),
            a -> new FlutedTool(a[3], a[2], a[3], a[4]).beam(a[1], a[5]).compliance(a[1], a[1]) * a[0],
            Source.of("Kops & Vo 1990 (abstract): rod of 0.8 times the cutting diameter; stepped cantilever"));

    public ToolBeam {
        sections = List.copyOf(sections);
        if (sections.isEmpty() || !(modulus > 0)) {
            throw new IllegalArgumentException("A tool has at least one section and a modulus above 0 N/mm², not "
                    + sections + ", " + modulus + ".");
        }
    }

    /** A rod of one diameter. */
    public static ToolBeam rod(double length, double diameter, double modulus) {
        return new ToolBeam(List.of(new BeamSection(length, diameter)), modulus);
    }

    /** The whole length that stands out of the holder, mm. */
    public double stickOut() {
        double sum = 0;
        for (BeamSection section : sections) {
            sum += section.length();
        }
        return sum;
    }

    /** Deflection at a place for each newton at another, mm/N; the same with the two places exchanged. */
    public double compliance(double place, double load) {
        double sum = 0;
        double from = 0;
        for (BeamSection section : sections) {
            double to = Math.min(from + section.length(), Math.min(place, load));
            if (to > from) {
                sum += bent(place, load, from, to) / Rod.inertia(section.diameter());
            }
            from += section.length();
        }
        return sum / modulus;
    }

    /** The integral of (place - s) (load - s) between two ends. */
    private static double bent(double place, double load, double from, double to) {
        return integral(place, load, to) - integral(place, load, from);
    }

    private static double integral(double place, double load, double s) {
        return s * (place * load - s * ((place + load) / 2 - s / 3));
    }

    /** How far the beam leans at a place for each newton at another, rad/N. */
    public double slope(double place, double load) {
        double sum = 0;
        double from = 0;
        for (BeamSection section : sections) {
            double to = Math.min(from + section.length(), Math.min(place, load));
            if (to > from) {
                sum += (to - from) * (load - (from + to) / 2) / Rod.inertia(section.diameter());
            }
            from += section.length();
        }
        return sum / modulus;
    }

    /**
     * The greatest stress of a side force and a torque that act at a place.
     *
     * @param force N
     * @param torque N·mm
     */
    public ToolStress stress(double force, double torque, double load) {
        List<ToolStress> all = new ArrayList<>();
        double from = 0;
        for (BeamSection section : sections) {
            if (from < load && section.length() > 0) {
                double bending = Rod.bending(Math.abs(force) * (load - from), section.diameter());
                all.add(new ToolStress(from, bending, Rod.torsion(Math.abs(torque), section.diameter())));
            }
            from += section.length();
        }
        ToolStress worst = new ToolStress(0, 0, 0);
        for (ToolStress stress : all) {
            worst = stress.combined() > worst.combined() ? stress : worst;
        }
        return worst;
    }
}

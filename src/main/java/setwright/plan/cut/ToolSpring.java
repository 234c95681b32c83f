package setwright.plan.cut;

import setwright.plan.Rows;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.rigidity.MountedTool;
import setwright.rigidity.ToolMaterials;
import setwright.shop.Cutter;

/**
 * How far a milling tool gives under its largest side force, on the springs of clamp, holder, taper and machine, and how
 * much of its strength it uses.
 *
 * @param worked deflection at the cut
 * @param band with the stiff and the soft ends of all springs
 * @param breakage stress over strength
 */
record ToolSpring(Worked worked, Band band, Worked leaves, double breakage) {
    /** @param reachBack how far above the tip the force acts, mm */
    static ToolSpring of(CutQuestion question, double force, double torque, double reachBack) {
        Cutter cutter = question.cutter();
        double stickOut = question.operation().stickOut().value().inside();
        Mounting mounting = question.mounting();
        MountedTool mounted = mounting.expected();
        double at = loadedAt(stickOut, reachBack);
        Worked worked = MountedTool.DEFLECTION.of(
                mounted.deflectionAtLoad(force, at),
                mounted.compliance(at, at).governing().words() + " gives most",
                question.field("largest side force", force, Unit.N, "peakForce"),
                question.field("stick-out", stickOut, Unit.MM, "stickOut"),
                question.tool("shank", cutter.shank().inside(), Unit.MM, "shank"),
                question.tool("flute length", cutter.fluteLength().inside(), Unit.MM, "fluteLength"),
                spring(question.rows(), mounted.springs().machine()));
        double stress = mounting.beam().stress(force, torque, at).combined();
        double strength = ToolMaterials.bendingStrength(cutter.material()).expected();
        Given lean = Given.of("lean of the tip", mounted.tipSlope(force, at), Unit.RAD, "the same beam");
        return new ToolSpring(
                worked,
                mounting.springs().compliance(mounting.beam(), at, at).times(force),
                MountedTool.FACE_LEAN.of(lean, question.diameter()),
                stress / strength);
    }

    /** Where the force acts, from the holder's face; never nearer to it than half the stick-out. */
    static double loadedAt(double stickOut, double reachBack) {
        return Math.max(stickOut - reachBack, stickOut / 2);
    }

    private static Given spring(Rows rows, double machine) {
        return Given.of(
                "spring of machine and taper",
                machine,
                Unit.N_PER_UM,
                "shop/" + rows.machine().id() + "/spring");
    }
}

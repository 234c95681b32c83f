package setwright.plan.cut;

import setwright.plan.Rows;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.rigidity.FlutedTool;
import setwright.rigidity.MountedTool;
import setwright.rigidity.Springs;
import setwright.rigidity.ToolBeam;
import setwright.rigidity.ToolMaterials;
import setwright.shop.Cutter;
import setwright.shop.Machine;

/**
 * How far a milling tool gives under its largest side force, on the spring of machine and taper, and how much of its
 * strength it uses.
 *
 * @param worked deflection at the cut
 * @param band with the stiff and the soft end of the machine
 * @param breakage stress over strength
 */
record ToolSpring(Worked worked, Band band, Worked leaves, double breakage) {
    /** @param reachBack how far above the tip the force acts, mm */
    static ToolSpring of(CutQuestion question, double force, double torque, double reachBack) {
        Cutter cutter = question.cutter();
        double stickOut = question.operation().stickOut().value().inside();
        Machine machine = question.rows().machine();
        Band springs = new Band(
                machine.spring().low().inside(),
                machine.spring().expected().inside(),
                machine.spring().high().inside());
        ToolBeam beam = beam(cutter, stickOut);
        MountedTool mounted = new MountedTool(beam, Springs.ofMachine(springs.expected()));
        double at = Math.max(stickOut - reachBack, stickOut / 2);
        Worked worked = MountedTool.DEFLECTION.of(
                mounted.deflectionAtLoad(force, at),
                mounted.compliance(at, at).governing().words() + " gives most",
                question.field("largest side force", force, Unit.N, "peakForce"),
                question.field("stick-out", stickOut, Unit.MM, "stickOut"),
                question.tool("shank", cutter.shank().inside(), Unit.MM, "shank"),
                question.tool("flute length", cutter.fluteLength().inside(), Unit.MM, "fluteLength"),
                spring(question.rows(), springs));
        double stress = beam.stress(force, torque, at).combined();
        double strength = ToolMaterials.bendingStrength(cutter.material()).expected();
        Given lean = Given.of("lean of the tip", mounted.tipSlope(force, at), Unit.RAD, "the same beam");
        return new ToolSpring(
                worked,
                mounted.deflectionAtLoad(force, at, springs),
                MountedTool.FACE_LEAN.of(lean, question.diameter()),
                stress / strength);
    }

    private static Given spring(Rows rows, Band springs) {
        return Given.of(
                "spring of machine and taper",
                springs.expected(),
                Unit.N_PER_UM,
                "shop/" + rows.machine().id() + "/spring");
    }

    /** A face mill stands on its arbor as thick as itself; every other tool is fluted on a plain shank. */
    private static ToolBeam beam(Cutter cutter, double stickOut) {
        double modulus = ToolMaterials.modulus(cutter.material()).expected();
        double diameter = cutter.diameter().inside();
        return switch (cutter.form()) {
            case FACE_MILL, FLY_CUTTER, SHELL_MILL, SLITTING_SAW, FORM_CUTTER ->
                ToolBeam.rod(stickOut, FlutedTool.END_MILL_CORE * diameter, STEEL);
            case END_MILL,
                    SPOT_DRILL,
                    DRILL,
                    REAMER,
                    TAP,
                    CENTRE_DRILL,
                    COUNTERSINK,
                    COUNTERBORE,
                    BORING_BAR,
                    KEYSEAT_CUTTER,
                    T_SLOT_CUTTER,
                    DOVETAIL_CUTTER,
                    CHAMFER_MILL,
                    CORNER_ROUNDER,
                    SCRIBER ->
                FlutedTool.endMill(
                                diameter,
                                cutter.fluteLength().inside(),
                                cutter.shank().inside())
                        .beam(stickOut, modulus);
        };
    }

    /** Modulus of a steel body, N/mm² (boring bar examples of a trade magazine use 206 GPa). */
    private static final double STEEL = 206000;
}

package setwright.figures;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.cutting.Direction;
import setwright.cutting.Kienzle;
import setwright.cutting.KienzleForce;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.cutting.Limits;
import setwright.cutting.MillingBounds;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingCutter;
import setwright.cutting.MillingForce;
import setwright.cutting.MillingLoad;
import setwright.cutting.SafeSpeed;
import setwright.quantity.Procedure;
import setwright.quantity.Source;
import setwright.quantity.Unit;
import setwright.rigidity.FlutedTool;
import setwright.rigidity.MountedTool;
import setwright.rigidity.Springs;
import setwright.rigidity.ToolBeam;
import setwright.rigidity.ToolMaterials;
import setwright.shop.Cutter;
import setwright.shop.CuttingSpeed;
import setwright.shop.Machine;
import setwright.shop.Material;
import setwright.shop.ToolMaterial;

/** What binds the depth of a milling cut: spindle power, spring and strength of the tool. */
record DepthLimits(
        Asked asked,
        CuttingSpeed row,
        Material material,
        @Nullable Machine machine,
        @Nullable Cutter like,
        double teeth,
        double speed,
        double feed) {

    static final Procedure LARGEST = new Procedure(
            "largest depth",
            List.of(
                    "the force over the turn from kc1.1 and mc at each depth",
                    "the depth grows until power, torque or belt of the spindle, spring of the tool (0.025 mm) or its strength is used up"),
            Unit.MM,
            Source.of("common practice: 0.001 in of spring for general work; the load as in milling-load"));

    /** Spring that general work stands, mm: 0.001 in, a cutter maker's page. */
    private static final double GENERAL_SPRING = 0.0254;

    private static final List<LimitName> DEEPER = List.of(
            LimitName.SPINDLE_POWER,
            LimitName.SPINDLE_TORQUE,
            LimitName.BELT,
            LimitName.TOOL_SPRING,
            LimitName.TOOL_BREAKAGE);

    private static final double LEAST = 0.05;

    /** Without a cutter to look at, flutes reach this many diameters (common practice). */
    private static final double FLUTES = 1.5;

    Limits.Range range() {
        double flutes = like == null
                ? FLUTES * asked.number("diameter")
                : like.fluteLength().inside();
        return new Limits.Range(LEAST, Math.max(2 * LEAST, flutes), 0.001);
    }

    /** Those that a deeper cut uses up more of. */
    List<Limit> deeper(double depth) {
        return at(depth).stream().filter(limit -> DEEPER.contains(limit.name())).toList();
    }

    /** All of them. */
    List<Limit> at(double depth) {
        MillingLoad load = load(depth);
        List<Limit> limits = new ArrayList<>();
        if (machine != null) {
            limits.addAll(bounds(machine).used(load, speed));
        }
        if (asked.has("stick-out")) {
            spring(load, depth, limits);
        }
        return limits;
    }

    private MillingBounds bounds(Machine on) {
        MillingBounds bounds = MillingBounds.of(made(), asked.number("diameter"), row, on);
        return like == null
                ? bounds
                : SafeSpeed.of(like, null)
                        .map(SafeSpeed::most)
                        .map(bounds::notFasterThan)
                        .orElse(bounds);
    }

    private ToolMaterial made() {
        return asked.is("tool", "HSS") ? ToolMaterial.HSS : ToolMaterial.CARBIDE;
    }

    private void spring(MillingLoad load, double depth, List<Limit> limits) {
        double stickOut = asked.number("stick-out");
        ToolMaterial made = made();
        double shank = like == null ? asked.number("diameter") : like.shank().inside();
        double flutes = like == null ? stickOut : like.fluteLength().inside();
        ToolBeam beam = FlutedTool.endMill(asked.number("diameter"), flutes, shank)
                .beam(stickOut, ToolMaterials.modulus(made).expected());
        Springs springs = machine == null
                ? Springs.RIGID
                : Springs.ofMachine(machine.spring().expected().inside());
        double at = Math.max(stickOut - depth / 2, stickOut / 2);
        double deflection = new MountedTool(beam, springs).deflectionAtLoad(load.peakResultant(), at);
        double stress = beam.stress(load.peakResultant(), load.peakTorque(), at).combined();
        limits.add(new Limit(LimitName.TOOL_SPRING, deflection / GENERAL_SPRING));
        limits.add(new Limit(
                LimitName.TOOL_BREAKAGE,
                stress / ToolMaterials.bendingStrength(made).expected()));
    }

    private MillingLoad load(double depth) {
        double helix = like == null ? 0 : like.fluteHelix();
        MillingCutter cutter = MillingCutter.square(asked.number("diameter"), (int) teeth, helix);
        double width = asked.number("width");
        boolean slot = width >= asked.number("diameter") * (1 - 1e-9);
        MillingCut cut = MillingCut.of(
                cutter,
                slot ? Direction.SLOT : Direction.CONVENTIONAL,
                new MillingCut.Section(width, depth),
                2 * Math.PI * feed / (speed * teeth));
        Kienzle law = new Kienzle(material.kc11().inside(), material.mc().inside());
        return MillingForce.of(cut, KienzleForce.of(law, cutter)).load();
    }
}

package setwright.figures;

import static setwright.figures.Input.choice;
import static setwright.figures.Input.measure;

import java.util.ArrayList;
import java.util.List;
import setwright.quantity.Given;
import setwright.quantity.Measure;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.rigidity.FlutedTool;
import setwright.rigidity.MountedTool;
import setwright.rigidity.Springs;
import setwright.rigidity.ToolBeam;
import setwright.rigidity.ToolMaterials;
import setwright.shop.ToolMaterial;

/** How far things give. */
final class RigidityFigures {
    private RigidityFigures() {}

    static List<Figure> all() {
        return List.of(new Figure(
                "tool-deflection",
                "A tool of {diameter} that stands {stick-out} out gives under {force} by",
                List.of(
                        measure("force", Measure.FORCE),
                        measure("stick-out", Measure.LENGTH),
                        measure("diameter", Measure.LENGTH),
                        measure("flute-length", Measure.LENGTH).from(0).maybe("as long as the stick-out"),
                        measure("core-ratio", Measure.RATIO).upTo(1).or("0.8"),
                        choice("tool", "HSS", "carbide").or("HSS"),
                        measure("modulus", Measure.STRESS).maybe("that of the tool counts"),
                        measure("holder-stiffness", Measure.STIFFNESS).maybe("rigid"),
                        measure("reach", Measure.LENGTH).maybe("at the tip")),
                List.of("deflection mm"),
                RigidityFigures::deflection));
    }

    private static Answered deflection(Asked asked) {
        Given stickOut = asked.value("stick-out");
        Given flutes = asked.valueOr(
                "flute-length", Given.of("flute length", stickOut.inside(), Unit.MM, "as long as the stick-out"));
        Given reach = asked.valueOr("reach", Given.of("reach of the force", stickOut.inside(), Unit.MM, "at the tip"));
        if (reach.inside() > stickOut.inside()) {
            throw Refusal.of("reach", "it is beyond the tip; accepted: above 0 up to the stick-out.");
        }
        Given modulus = asked.valueOr("modulus", modulus(asked.words("tool")));
        Given diameter = asked.value("diameter");
        ToolBeam beam = new FlutedTool(
                        diameter.inside(), flutes.inside(), diameter.inside(), asked.number("core-ratio"))
                .beam(stickOut.inside(), modulus.inside());
        List<Value> from = new ArrayList<>(
                List.of(asked.value("force"), stickOut, diameter, flutes, asked.value("core-ratio"), modulus, reach));
        if (asked.has("holder-stiffness")) {
            from.add(asked.value("holder-stiffness"));
        }
        MountedTool tool =
                new MountedTool(beam, Springs.ofMachine(asked.numberOr("holder-stiffness", Double.POSITIVE_INFINITY)));
        boolean plain = !asked.has("holder-stiffness") && !asked.has("reach");
        return Answered.of(Answer.of(
                "deflection",
                plain
                        ? ToolBeam.TIP_DEFLECTION.of(
                                asked.value("force"), stickOut, flutes, diameter, asked.value("core-ratio"), modulus)
                        : MountedTool.DEFLECTION.of(
                                tool.tipDeflection(asked.number("force"), reach.inside()),
                                "at the tip",
                                from.toArray(Value[]::new)),
                Unit.MM));
    }

    private static Given modulus(String tool) {
        ToolMaterial material = tool.equals("carbide") ? ToolMaterial.CARBIDE : ToolMaterial.HSS;
        return Given.of(
                "modulus of elasticity",
                ToolMaterials.modulus(material).expected(),
                Unit.N_PER_MM2,
                ToolMaterials.MODULUS.source().text());
    }
}

package setwright.plan.cut;

import java.util.ArrayList;
import java.util.List;
import setwright.cutting.CuttingPower;
import setwright.cutting.EdgeForce;
import setwright.cutting.MillingForce;
import setwright.cutting.MillingLoad;
import setwright.cutting.ShapedCut;
import setwright.cutting.UnitPower;
import setwright.quantity.Given;
import setwright.quantity.Stress;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/** Power and side force of a milled cut by the other published ways: the handbook's unit power, cutting tests. */
record MilledOpinions(CutQuestion question, MilledShape shape, ShapedCut cut) {
    List<SecondOpinion> of(Worked power, Worked peak) {
        List<SecondOpinion> found = new ArrayList<>();
        Typed<Stress> unitPower = question.rows().material().unitPower();
        if (unitPower != null && power.inside() > 0) {
            found.add(new SecondOpinion(power, byUnitPower(unitPower.inside())));
        }
        if (power.inside() > 0) {
            shape.linear().ifPresent(law -> found.addAll(byTests(law, power, peak)));
        }
        return found;
    }

    private Worked byUnitPower(double unitPower) {
        double turns = question.speed().inside() / (2 * Math.PI);
        Value removed = Given.of(
                "removal rate", cut.removedPerTurn() * turns, Unit.CM3_PER_MIN, "section of the cut times its feed");
        Value feed = Given.of("feed per tooth", shape.feed(), Unit.MM, "feed over speed and teeth");
        return UnitPower.AT_CUTTER.of(
                question.shop("unit power", unitPower, Unit.KW_S_PER_CM3, "unitPower"),
                removed,
                UnitPower.FEED_FACTOR.of(feed),
                Given.of("wear factor", 1, Unit.NONE, "a sharp edge"));
    }

    private List<SecondOpinion> byTests(EdgeForce law, Worked power, Worked peak) {
        MillingLoad load = MillingForce.of(cut, law).load();
        String with = "by the coefficients of cutting tests";
        Worked torque = MillingForce.MEAN_TORQUE.of(load.meanTorque(), with, coefficients());
        return List.of(
                new SecondOpinion(power, CuttingPower.POWER.of(torque, question.speed())),
                new SecondOpinion(peak, MillingForce.PEAK_FORCE.of(load.peakResultant(), with, coefficients())));
    }

    private Value[] coefficients() {
        EdgeForce.Parts atNone = shape.linear().orElseThrow().at(0);
        EdgeForce.Parts atOne = shape.linear().orElseThrow().at(1);
        return new Value[] {
            question.shop("Ktc", atOne.tangential() - atNone.tangential(), Unit.N_PER_MM2, "edge/tangentialChip"),
            question.shop("Krc", atOne.normal() - atNone.normal(), Unit.N_PER_MM2, "edge/radialChip"),
            question.shop("Kte", atNone.tangential(), Unit.N_PER_MM, "edge/tangentialEdge"),
            question.shop("Kre", atNone.normal(), Unit.N_PER_MM, "edge/radialEdge")
        };
    }
}

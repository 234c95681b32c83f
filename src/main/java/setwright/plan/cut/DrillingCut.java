package setwright.plan.cut;

import setwright.cutting.ChiselFactors;
import setwright.cutting.Drilling;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** A drilled or spotted hole by the handbook's thrust and torque for a plain drill. */
final class DrillingCut {
    private static final Given SHARP = Given.of("wear factor", 1, Unit.NONE, "a sharp drill");

    private DrillingCut() {}

    static OperationCut of(CutQuestion question) {
        Value feed = question.feedPerTurn();
        Value factor = question.shop(
                "work-material factor", question.rows().material().drillFactor().inside(), Unit.NONE, "drillFactor");
        ChiselFactors chisel = ChiselFactors.of(ChiselFactors.STANDARD_WEB, 0);
        Value thrust = Drilling.THRUST.of(
                factor,
                feed,
                question.diameter(),
                chisel("chisel factor of thrust", chisel.lips()),
                chisel("web factor of thrust", chisel.web()),
                SHARP);
        Value torque = Drilling.TORQUE.of(
                factor, feed, question.diameter(), chisel("chisel factor of torque", chisel.torque()), SHARP);
        return HoleCut.of(question, feed, torque, thrust);
    }

    private static Given chisel(String name, double factor) {
        return Given.of(name, factor, Unit.NONE, "a plain point, web 0.18 of the diameter");
    }
}

package setwright.plan.cut;

import setwright.cutting.ChiselFactors;
import setwright.cutting.Drilling;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** A drilled or spotted hole, or a mouth opened beside one, by the handbook's thrust and torque for a plain drill. */
final class DrillingCut {
    private static final Given SHARP = Given.of("wear factor", 1, Unit.NONE, "a sharp drill");

    /** Of the diameter, so far as the factors of a pilot hole go. */
    private static final double MOST_PILOT = 0.95;

    private DrillingCut() {}

    static OperationCut of(CutQuestion question) {
        Value feed = question.feedPerTurn();
        Value factor = question.shop(
                "work-material factor", question.rows().material().drillFactor().inside(), Unit.NONE, "drillFactor");
        double pilot = Math.min(MOST_PILOT, question.holeBefore().orElse(0.0) / question.opened());
        ChiselFactors chisel = ChiselFactors.of(ChiselFactors.STANDARD_WEB, pilot);
        Value thrust = Drilling.THRUST.of(
                factor,
                feed,
                question.openedDiameter(),
                chisel("chisel factor of thrust", chisel.lips(), pilot),
                chisel("web factor of thrust", chisel.web(), pilot),
                SHARP);
        Value torque = Drilling.TORQUE.of(
                factor,
                feed,
                question.openedDiameter(),
                chisel("chisel factor of torque", chisel.torque(), pilot),
                SHARP);
        return HoleCut.of(question, feed, torque, thrust);
    }

    private static Given chisel(String name, double factor, double pilot) {
        String point = pilot > 0 ? "the ring beside the hole that is there" : "a plain point, web 0.18 of the diameter";
        return Given.of(name, factor, Unit.NONE, point);
    }
}

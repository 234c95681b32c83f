package setwright.plan.cut;

import java.util.List;
import setwright.cutting.ChiselFactors;
import setwright.cutting.ConeCut;
import setwright.cutting.Drilling;
import setwright.cutting.Kienzle;
import setwright.cutting.Reaming;
import setwright.job.Operation;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;

/** A drilled or spotted hole, or a mouth opened beside one, by the handbook's thrust and torque for a plain drill. */
final class DrillingCut {
    private static final Given SHARP = Given.of("wear factor", 1, Unit.NONE, "a sharp drill");
    private static final Given UNCORRECTED =
            Given.of("correction", 1, Unit.NONE, "a sharp edge; makers allow 1.2 to 1.6 (from memory)");

    /** Of the diameter, so far as the factors of a pilot hole go. */
    private static final double MOST_PILOT = 0.95;

    private final CutQuestion question;
    private final Value diameter;
    private final double pilot;
    private final double web;

    private DrillingCut(CutQuestion question) {
        this.question = question;
        diameter = point() ? opened(question) : question.openedDiameter();
        pilot = point() ? 0 : Math.min(MOST_PILOT, question.holeBefore().orElse(0.0) / question.opened());
        web = point()
                ? ConeCut.webRatio(
                        ChiselFactors.STANDARD_WEB, question.cutter().diameter().inside(), diameter.inside())
                : ChiselFactors.STANDARD_WEB;
    }

    static OperationCut of(CutQuestion question) {
        return new DrillingCut(question).cut().of(question);
    }

    private HoleCut cut() {
        Value feed = question.feedPerTurn();
        Value factor = question.shop(
                "work-material factor", question.rows().material().drillFactor().inside(), Unit.NONE, "drillFactor");
        ChiselFactors chisel = ChiselFactors.of(web, pilot);
        Value thrust = Drilling.THRUST.of(
                factor,
                feed,
                diameter,
                chisel("chisel factor of thrust", chisel.lips()),
                chisel("web factor of thrust", chisel.web()),
                SHARP);
        Value torque =
                Drilling.TORQUE.of(factor, feed, diameter, chisel("chisel factor of torque", chisel.torque()), SHARP);
        SecondOpinion byKc = new SecondOpinion(torque, byKc(feed));
        return new HoleCut(feed, torque, thrust, 1, List.of(byKc), work(feed, byKc, thrust));
    }

    private HoleWork work(Value feed, SecondOpinion byKc, Value thrust) {
        Band turns = byKc.band();
        Band torque = new Band(
                turns.low(), turns.expected(), Math.max(turns.high(), Kienzle.WORN_EDGE.inside() * turns.expected()));
        Band push = new Band(thrust.inside(), thrust.inside(), Kienzle.WORN_EDGE.inside() * thrust.inside());
        return switch (question.operation().kind()) {
            case DRILL, SPOT -> HoleWork.drilled(question, feed.inside(), torque, push);
            default -> HoleWork.plain(question, torque, push);
        };
    }

    /** Two lips of a drill, or as many as the tool has, on the ring from the hole that is there. */
    private Worked byKc(Value feed) {
        Value specific = question.cutter().teeth() == 2 ? onTwoLips(feed) : onLips(feed);
        Given hole = Given.of(
                "pilot hole", pilot * diameter.inside(), Unit.MM, pilot > 0 ? "the hole that is there" : "solid work");
        return Drilling.TORQUE_BY_KC.of(diameter, hole, feed, specific, UNCORRECTED);
    }

    private Value onTwoLips(Value feed) {
        Value angle = question.tool("point angle", question.cutter().tipAngle(), Unit.DEG, "pointAngle");
        return Drilling.SPECIFIC_FORCE.of(question.kc11(), question.mc(), feed, angle);
    }

    private Value onLips(Value feed) {
        Value angle = question.tool(
                "angle of the lips to the axis", question.cutter().tipAngle() / 2, Unit.DEG, "pointAngle");
        Value teeth = question.tool("teeth", question.cutter().teeth(), Unit.NONE, "teeth");
        return Kienzle.SPECIFIC_FORCE.of(question.kc11(), question.mc(), Reaming.CHIP.of(feed, angle, teeth));
    }

    /** Whether only the point of a pointed tool goes in. */
    private boolean point() {
        return question.operation().kind() == Operation.Kind.SPOT
                && question.cutter().tipAngle() < Math.PI
                && coneOpens() < question.cutter().diameter().inside();
    }

    private double coneOpens() {
        return ConeCut.opened(depth(), question.cutter().tipAngle());
    }

    private double depth() {
        return question.place().depth();
    }

    private Value opened(CutQuestion spot) {
        return ConeCut.OPENED.of(
                spot.field("depth of the point", depth(), Unit.MM, "depth"),
                spot.tool("point angle", spot.cutter().tipAngle(), Unit.DEG, "pointAngle"));
    }

    private Given chisel(String name, double factor) {
        String at = pilot > 0
                ? "the ring beside the hole that is there"
                : point()
                        ? "the chisel edge of the whole drill on the cone that is in"
                        : "a plain point, web 0.18 of the diameter";
        return Given.of(name, factor, Unit.NONE, at);
    }
}

package setwright.plan.cut;

import java.util.List;
import setwright.cutting.Kienzle;
import setwright.cutting.Reaming;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** A reamed hole: the kc form on the thin ring that is left. */
final class ReamingCut {
    private static final Given SHARP = Given.of("correction", 1, Unit.NONE, "a sharp reamer");
    private static final Given BEVEL = Given.of(
            "angle of the bevel to the axis", Math.PI / 4, Unit.DEG, "common practice: 45° on machine reamers");

    /** Stock on the diameter that is counted on where the hole before is not known, mm. */
    private static final double USUAL_STOCK = 0.25;

    private ReamingCut() {}

    static OperationCut of(CutQuestion question) {
        Value feed = question.feedPerTurn();
        Value teeth = question.tool("teeth", question.cutter().teeth(), Unit.NONE, "teeth");
        Value chip = Reaming.CHIP.of(feed, BEVEL, teeth);
        Value specific = Kienzle.SPECIFIC_FORCE.of(question.kc11(), question.mc(), chip);
        double before =
                question.holeBefore().orElse(question.cutter().diameter().inside() - USUAL_STOCK);
        Value hole = Given.of("hole before reaming", before, Unit.MM, "the drill before it");
        Value torque = Reaming.TORQUE.of(question.diameter(), hole, feed, specific, SHARP);
        Band band = new Band(torque.inside(), torque.inside(), Kienzle.WORN_EDGE.inside() * torque.inside());
        return new HoleCut(feed, torque, null, 1, List.of(), HoleWork.plain(question, band, null)).of(question);
    }
}

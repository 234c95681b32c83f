package setwright.plan.cut;

import setwright.cutting.Drilling;
import setwright.cutting.Kienzle;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** A bored hole: the kc form on the ring of one pass, the chip as thick as the feed. */
final class BoringCut {
    /** Deepest cut of a bar in a boring head, on the radius, mm (common practice). */
    private static final double DEEPEST = 1;

    /** Stock on the diameter that is counted on where the hole before is not known, mm. */
    private static final double USUAL_STOCK = 1;

    private static final Given SHARP = Given.of("correction", 1, Unit.NONE, "a sharp edge");

    private BoringCut() {}

    static OperationCut of(CutQuestion question) {
        double size = question.opened();
        double stock = (size - question.holeBefore().orElse(size - USUAL_STOCK)) / 2;
        int passes = Math.max(1, (int) Math.ceil(stock / DEEPEST - 1e-9));
        Value feed = question.feedPerTurn();
        Value specific = Kienzle.SPECIFIC_FORCE.of(question.kc11(), question.mc(), feed);
        Value before = Given.of(
                "hole before the last pass", size - 2 * stock / passes, Unit.MM, passes + " passes of equal depth");
        Value torque = Drilling.TORQUE_BY_KC.of(question.openedDiameter(), before, feed, specific, SHARP);
        return HoleCut.of(question, feed, torque, null, passes);
    }
}

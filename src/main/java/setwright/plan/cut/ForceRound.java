package setwright.plan.cut;

import java.util.Optional;
import setwright.cutting.ForcePolygon;
import setwright.cutting.MillingForce;
import setwright.cutting.SpeedAndFeed;
import setwright.cutting.UnevenTeeth;
import setwright.job.DrawnUp;
import setwright.plan.Rows;
import setwright.plan.part.PartPlan;

/**
 * The force of a milled operation round the turn.
 *
 * @param even all teeth alike
 * @param runningOut with the poor end of the holder's run-out
 */
public record ForceRound(ForcePolygon even, ForcePolygon runningOut) {

    /** Worked out anew at every call; empty in a hole and where the cut cannot be worked out. */
    public static Optional<ForceRound> of(DrawnUp drawnUp, Rows rows, PartPlan part, String operation) {
        return Cuts.question(drawnUp, rows, part, operation)
                .filter(question -> !question.operation().kind().inHole())
                .filter(question -> question.speed().inside() > 0)
                .flatMap(question -> MilledSection.of(question).map(section -> of(question, section)));
    }

    private static ForceRound of(CutQuestion question, MilledSection section) {
        int teeth = question.cutter().teeth();
        double feed = SpeedAndFeed.feedPerTooth(
                question.feed().inside(), question.speed().inside(), teeth);
        MilledShape shape = new MilledShape(question, section, Math.max(feed, 1e-6));
        var cut = shape.cut();
        UnevenTeeth uneven = UnevenTeeth.worstRunningOut(
                teeth, MilledExtremes.runOut(question).inside() / 2, cut.whole().largestChip());
        return new ForceRound(
                ForcePolygon.of(MillingForce.of(cut, shape.kienzle())),
                ForcePolygon.of(MillingForce.of(cut, shape.kienzle(), uneven)));
    }
}

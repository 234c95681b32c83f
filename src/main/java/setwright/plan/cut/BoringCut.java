package setwright.plan.cut;

import java.util.Comparator;
import java.util.List;
import setwright.cutting.Drilling;
import setwright.cutting.Kienzle;
import setwright.cutting.TrialCuts;
import setwright.cutting.TrialCuts.TrialCut;
import setwright.job.Operation;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Value;

/** A bored hole: the kc form on the ring of its deepest cut, the chip as thick as the feed. */
final class BoringCut {
    /** Deepest cut of a bar in a boring head, on the radius, mm (common practice). */
    private static final double DEEPEST = 1;

    /** Stock on the diameter that is counted on where the hole before is not known, mm. */
    private static final double USUAL_STOCK = 1;

    private static final Given SHARP = Given.of("correction", 1, Unit.NONE, "a sharp edge");

    private BoringCut() {}

    static OperationCut of(CutQuestion question) {
        List<TrialCut> cuts = cuts(question);
        TrialCut deepest = cuts.stream()
                .max(Comparator.comparingDouble(TrialCut::depth).thenComparingDouble(TrialCut::to))
                .orElseThrow();
        Value feed = question.feedPerTurn();
        Value specific = Kienzle.SPECIFIC_FORCE.of(question.kc11(), question.mc(), feed);
        Value torque = Drilling.TORQUE_BY_KC.of(
                Given.of("diameter after the deepest cut", deepest.to(), Unit.MM, cuts.size() + " cuts"),
                Given.of("hole before it", deepest.from(), Unit.MM, "cuts of equal depth"),
                feed,
                specific,
                SHARP);
        Band band = new Band(torque.inside(), torque.inside(), Kienzle.WORN_EDGE.inside() * torque.inside());
        HoleWork work = HoleWork.plain(question, band, null).with(cuts);
        return new HoleCut(feed, torque, null, cuts.size(), List.of(), work).of(question);
    }

    private static List<TrialCut> cuts(CutQuestion question) {
        double size = question.opened();
        double before = Math.min(size, question.holeBefore().orElse(size - USUAL_STOCK));
        Operation.LastPass last = question.operation().lastPass().value();
        double finish = question.operation().finish().value().inside();
        List<TrialCut> cuts = TrialCuts.of(new TrialCuts.Wanted(
                before,
                size,
                DEEPEST,
                last == Operation.LastPass.NONE ? 0 : finish,
                last == Operation.LastPass.WITH_SPRING_PASS));
        return cuts.isEmpty() ? List.of(new TrialCut(TrialCuts.Kind.ROUGH, size, size)) : cuts;
    }
}

package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.cutting.EasedFeed;
import setwright.cutting.PeckPlan;
import setwright.cutting.TrialCuts.TrialCut;
import setwright.plan.part.HoleDepths;
import setwright.quantity.Band;

/**
 * How one hole of an operation is made; depths are those of the tool point below the surface, mm.
 *
 * @param opened diameter that it leaves
 * @param pecks depths at which the drill comes out for its chips, the whole depth last
 * @param entry what its point meets first
 * @param entering how it is fed until its point is in; null at the planned feed
 * @param breakingThrough how it is fed where it breaks through; null at the planned feed, or blind
 * @param trials the cuts of a boring head; empty for every other tool
 * @param fromBehind whether the cutter is fitted from below and drawn up, so that its push lifts the part
 * @param torque from the least to the most that sources and wear give, N·mm
 * @param thrust the same, N; null where none is worked out
 */
public record HoleWork(
        double opened,
        List<Double> pecks,
        HoleEntry entry,
        @Nullable EasedFeed entering,
        @Nullable EasedFeed breakingThrough,
        List<TrialCut> trials,
        boolean fromBehind,
        Band torque,
        @Nullable Band thrust) {
    public HoleWork {
        pecks = List.copyOf(pecks);
        trials = List.copyOf(trials);
    }

    /** Fed evenly down to its depth in one go. */
    static HoleWork plain(CutQuestion question, Band torque, @Nullable Band thrust) {
        double depth = question.place().depth();
        return new HoleWork(
                question.opened(),
                List.of(depth),
                HoleEntry.SQUARE,
                null,
                null,
                List.of(),
                HoleDepths.fromBehind(question.cutter()),
                torque,
                thrust);
    }

    /** A drill: in pecks, gently in where the face is rough or slanted, gently out where it goes through. */
    static HoleWork drilled(CutQuestion question, double feedPerTurn, Band torque, Band thrust) {
        double depth = question.place().depth();
        double thickness = question.place().workTop() - question.heights().partBottom();
        HoleEntry entry = HoleEntry.of(question);
        return new HoleWork(
                question.opened(),
                PeckPlan.depths(question.cutter().diameter().inside(), depth),
                entry,
                entry == HoleEntry.SQUARE ? null : EasedFeed.entering(point(question, depth), feedPerTurn),
                EasedFeed.breakingThrough(thickness, depth, feedPerTurn).orElse(null),
                List.of(),
                false,
                torque,
                thrust);
    }

    private static double point(CutQuestion question, double depth) {
        double half = question.cutter().diameter().inside() / 2;
        return Math.min(depth, half / StrictMath.tan(question.cutter().tipAngle() / 2));
    }

    /** The same with the cuts of a boring head. */
    HoleWork with(List<TrialCut> cuts) {
        return new HoleWork(opened, pecks, entry, entering, breakingThrough, cuts, fromBehind, torque, thrust);
    }

    /** How often the drill comes out before the hole is through or deep enough. */
    public int clearings() {
        return pecks.size() - 1;
    }

    /** What the gentle stretches cost, mm of travel at the planned feed. */
    public double longerBy() {
        return Optional.ofNullable(entering).map(EasedFeed::longerBy).orElse(0.0)
                + Optional.ofNullable(breakingThrough).map(EasedFeed::longerBy).orElse(0.0);
    }
}

package setwright.plan.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.cutting.LeverPush;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.holding.ShankGrip;
import setwright.job.Operation;
import setwright.quantity.Length;
import setwright.quantity.Typed;
import setwright.quantity.Value;

/** The limits of a cut in a hole, with the share used, largest first. */
final class HoleLimits {
    private HoleLimits() {}

    static List<Limit> of(CutQuestion question, HoleCut cut, Value power) {
        List<Limit> limits = new ArrayList<>();
        if (question.speed().inside() > 0) {
            limits.add(new Limit(LimitName.CUTTING_EDGE, question.shareOfCuttingSpeed()));
            limits.add(new Limit(LimitName.SPINDLE_POWER, power.inside() / question.spindlePower()));
        }
        breakage(question, cut).ifPresent(used -> limits.add(new Limit(LimitName.TOOL_BREAKAGE, used)));
        shank(question, cut).ifPresent(used -> limits.add(new Limit(LimitName.SHANK_GRIP, used)));
        feed(question, cut).ifPresent(used -> limits.add(new Limit(LimitName.FEED_RANGE, used)));
        limits.sort(Comparator.comparingDouble(Limit::used).reversed().thenComparing(Limit::name));
        return limits;
    }

    /** Twisted off or buckled, whichever is nearer. */
    private static OptionalDouble breakage(CutQuestion question, HoleCut cut) {
        Optional<ThinTool> tool = ThinTool.of(
                question.cutter(), question.operation().stickOut().value().inside());
        double thrust = cut.thrust() == null ? 0 : cut.thrust().inside();
        return tool.map(rod ->
                        OptionalDouble.of(Math.max(rod.twisting(cut.torque().inside()), rod.buckling(thrust))))
                .orElse(OptionalDouble.empty());
    }

    /** On a bad day; turned by hand nothing slips. */
    private static OptionalDouble shank(CutQuestion question, HoleCut cut) {
        double shank = question.cutter().shank().inside();
        return question.operation().method().value().byHand()
                ? OptionalDouble.empty()
                : question.rows()
                        .holder(question.operation().holder().value())
                        .flatMap(ShankHold::of)
                        .map(grip -> OptionalDouble.of(cut.torque().inside() / ShankGrip.slipTorque(grip.low(), shank)))
                        .orElse(OptionalDouble.empty());
    }

    /** What the quill's feed may carry, or a hand on its lever pushes at the slowest sensible feed. */
    private static OptionalDouble feed(CutQuestion question, HoleCut cut) {
        Operation.Method method = question.operation().method().value();
        Typed<Length> largest = question.rows().machine().quillFeedLargestDrill();
        if (method == Operation.Method.QUILL_POWER && largest != null) {
            return OptionalDouble.of(question.cutter().diameter().inside() / largest.inside());
        }
        return method.byLever() && question.operation().kind() == Operation.Kind.DRILL
                ? OptionalDouble.of(slowestPush(question, cut) / LeverPush.BY_HAND)
                : OptionalDouble.empty();
    }

    private static double slowestPush(CutQuestion question, HoleCut cut) {
        return LeverPush.slowest(
                question.cutter().diameter().inside(),
                cut.feed().inside(),
                question.holeBefore().orElse(0.0),
                question.rows().material().drillFactor().inside());
    }
}

package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import setwright.cutting.TrialCuts;
import setwright.cutting.TrialCuts.TrialCut;
import setwright.job.Operation;
import setwright.plan.cut.SurfaceLeft.Surface;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Unit;
import setwright.quantity.Worked;
import setwright.rigidity.BarLeft;

/** What the spring of a boring bar leaves in its bore, by the last cut of it. */
final class BoreLeft {
    /** A bore is measured before its last cut, which takes half of what is left: this at most, mm on the radius (common practice). */
    private static final double USUAL_LAST = 0.1;

    private BoreLeft() {}

    static Optional<SurfaceLeft> of(CutQuestion question, OperationCut cut) {
        double radius = question.opened() / 2;
        List<TrialCut> cuts = cut.hole() == null ? List.of() : cut.hole().trials();
        double depth = cuts.stream().mapToDouble(TrialCut::depth).max().orElse(0);
        if (!(depth > 0) || question.speed().inside() <= 0) {
            return Optional.empty();
        }
        Operation.LastPass last = question.operation().lastPass().value();
        double lastDepth = cuts.stream()
                .filter(one -> one.kind() == TrialCuts.Kind.LAST)
                .mapToDouble(TrialCut::depth)
                .findFirst()
                .orElse(Math.min(USUAL_LAST, depth));
        double tangential = cut.torque().inside() / radius * lastDepth / depth;
        Mounting mounting = question.mounting();
        double out = mounting.beam().stickOut();
        Band gives = mounting.springs().compliance(mounting.beam(), out, out);
        Given force = question.field("tangential force on the bar", tangential, Unit.N, "torque");
        Worked worked = BarLeft.LEFT.of(
                force,
                Given.of(
                        "millimetres that the bar gives for each newton", gives.expected(), Unit.NONE, "stepped beam"));
        if (last == Operation.LastPass.WITH_SPRING_PASS) {
            Worked after = sprung(worked, lastDepth);
            return Optional.of(left(after, gives, after.inside()));
        }
        return Optional.of(left(worked, gives, worked.inside()));
    }

    private static Worked sprung(Worked first, double depth) {
        Given left = Given.of("left by the cut before", first.inside(), Unit.MM, "the cut before the spring pass");
        return BarLeft.SPRUNG.of(left, Given.of("depth of that cut", depth, Unit.MM, "the cut before the spring pass"));
    }

    private static SurfaceLeft left(Worked worked, Band gives, double left) {
        double soft = left * gives.high() / gives.expected();
        double stiff = left * gives.low() / gives.expected();
        return new SurfaceLeft(Surface.BORE, worked, SurfacesLeft.band(stiff, left, soft), left, left);
    }
}

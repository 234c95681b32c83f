package setwright.plan.cut;

import java.util.Optional;
import setwright.cutting.MillingCut;
import setwright.rigidity.WallLeft;

/**
 * How much of what is allowed the spring of a cutter uses up at a wall: the last pass of the tolerance, roughing of half the
 * stock that it leaves for that pass.
 */
record SpringShare(CutQuestion question, LastPass last) {
    /** Of the stock for the last pass that roughing may spring into (common practice). */
    private static final double OF_STOCK = 0.5;

    /** Empty where the drawing leaves the walls general and no last pass is planned. */
    static Optional<Double> of(CutQuestion question, MillingCut rough) {
        LastPass last = LastPass.of(question, rough);
        SpringShare share = new SpringShare(question, last);
        return switch (question.operation().kind()) {
            case STEP, PROFILE, POCKET -> share.most();
            case SLOT, KEYSEAT -> last.slot() ? Optional.empty() : share.most();
            default -> Optional.empty();
        };
    }

    private Optional<Double> most() {
        Optional<Double> finished = Tolerated.of(question.features()).map(allowed -> finishedBy() / allowed.out());
        return last.finishing()
                ? Optional.of(Math.max(finished.orElse(0.0), roughed() / (OF_STOCK * last.width())))
                : finished;
    }

    /** Share of the tolerance that the pass which leaves a wall uses up; empty where metal is not left on, or nothing is asked. */
    static Optional<Double> leftOn(CutQuestion question, MillingCut rough) {
        LastPass last = LastPass.of(question, rough);
        double left = new SpringShare(question, last).farthest(last.cut());
        return Tolerated.of(question.features()).filter(allowed -> left > 0).map(allowed -> left / allowed.out());
    }

    private double finishedBy() {
        double first = farthest(last.cut());
        return Math.abs(
                last.sprung() && first > 0
                        ? farthest(last.ofWidth(first, last.cut().axialDepth()))
                        : first);
    }

    /** Only what goes into the wall is lost. */
    private double roughed() {
        return Math.max(0, -farthest(last.roughing()));
    }

    private double farthest(MillingCut cut) {
        Mounting mounting = question.mounting();
        double at = ToolSpring.loadedAt(mounting.beam().stickOut(), cut.axialDepth() / 2);
        return WallLeft.of(question.force(cut), cut, last.wall(), mounting.expected(), at)
                .farthest();
    }
}

package setwright.plan.cut;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.cutting.CuttingPower;
import setwright.cutting.Limit;
import setwright.cutting.MillingForce;
import setwright.cutting.MillingLoad;
import setwright.cutting.ShapedCut;
import setwright.cutting.SpeedAndFeed;
import setwright.job.Operation;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.shop.Axis;

/** A milled operation of whatever kind: force over the turn, power, spring and the limits it uses up. */
final class MilledCut {
    private final CutQuestion question;
    private final MilledSection section;
    private final Value feedPerTooth;
    private final MilledShape shape;
    private final ShapedCut cut;
    private final MillingLoad load;
    private final ToolSpring spring;

    private MilledCut(CutQuestion question, MilledSection section) {
        this.question = question;
        this.section = section;
        Value teeth = question.tool("teeth", question.cutter().teeth(), Unit.NONE, "teeth");
        feedPerTooth = SpeedAndFeed.FEED_PER_TOOTH.of(question.feed(), question.speed(), teeth);
        shape = new MilledShape(question, section, Math.max(feedPerTooth.inside(), 1e-6));
        cut = shape.cut();
        load = MillingForce.of(cut, shape.kienzle()).load();
        spring = ToolSpring.of(question, load.peakResultant(), load.peakTorque(), section.depth() / 2);
    }

    /** Empty where nothing says what stands in the cutter's way. */
    static Optional<OperationCut> of(CutQuestion question) {
        return MilledSection.of(question).map(section -> new MilledCut(question, section).worked());
    }

    /** The limits alone; none where nothing is in the way. */
    static List<Limit> limits(CutQuestion question) {
        return MilledSection.of(question)
                .map(section -> new MilledCut(question, section))
                .map(milled -> milled.limits(Stabilities.measured(question, milled.cut.whole())))
                .orElse(List.of());
    }

    /** With those of the last pass, where one of its own follows. */
    private List<Limit> limits(@Nullable Stability stability) {
        List<Limit> roughing = new MilledLimits(question, load, spring, stability).used();
        LastPass last = LastPass.of(question, load.cut());
        if (!last.finishing() || question.operation().kind() == Operation.Kind.FACE) {
            return roughing;
        }
        MillingLoad lighter = MillingForce.of(last.cut(), shape.kienzle()).load();
        ToolSpring gives = ToolSpring.of(
                question,
                lighter.peakResultant(),
                lighter.peakTorque(),
                last.cut().axialDepth() / 2);
        return MilledLimits.both(roughing, new MilledLimits(question, lighter, gives, null).used());
    }

    /** How much of what is allowed is left on a wall by the pass that leaves it; see {@link SpringShare}. */
    static double leftOn(CutQuestion question) {
        return MilledSection.of(question)
                .map(section -> new MilledCut(question, section))
                .flatMap(milled -> SpringShare.leftOn(question, milled.cut.whole()))
                .orElse(0.0);
    }

    /** What the pass leaves of the walls; none where nothing is in the way. */
    static List<SurfaceLeft> left(CutQuestion question) {
        return MilledSection.of(question)
                .map(section -> new MilledCut(question, section))
                .map(milled -> SurfacesLeft.of(question, milled.cut.whole()))
                .orElse(List.of());
    }

    private OperationCut worked() {
        Value[] inputs = {
            question.kc11(),
            question.mc(),
            question.field("width of cut", section.width(), Unit.MM, "width"),
            question.field("depth of cut", section.depth(), Unit.MM, "depth"),
            question.diameter(),
            feedPerTooth
        };
        Worked torque = MillingForce.MEAN_TORQUE.of(load.meanTorque(), peakWords(), inputs);
        Worked peak = MillingForce.PEAK_FORCE.of(load.peakResultant(), peakWords(), inputs);
        Worked power = CuttingPower.POWER.of(torque, question.speed());
        List<SecondOpinion> opinions = new MilledOpinions(question, shape, cut).of(power, peak);
        Stability stability = Stabilities.of(question, cut.whole());
        return new OperationCut(
                question.operation().id(),
                question.speed(),
                question.wantedSpeed(),
                question.feed(),
                feedPerTooth,
                secondsPerTurn(),
                section.depth(),
                section.width(),
                section.passes(),
                power,
                torque,
                peak,
                null,
                load,
                spring.worked(),
                spring.band(),
                spring.leaves(),
                MilledExtremes.of(new MilledExtremes.Nominal(question, shape, cut, power), opinions, inputs),
                opinions,
                stability,
                limits(stability),
                null,
                List.of(),
                List.of());
    }

    private String peakWords() {
        long degrees = Math.round(StrictMath.toDegrees(load.peakAngle()));
        return "largest with a tooth at " + degrees + "° from the side";
    }

    private @Nullable Value secondsPerTurn() {
        Axis axis = question.rows().machine().x();
        if (axis.powerFeed()) {
            return null;
        }
        Value turn = setwright.quantity.Given.of(
                "travel of a turn of the handle",
                axis.perTurn().inside(),
                Unit.MM,
                "shop/" + question.rows().machine().id() + "/x/perTurn");
        return SpeedAndFeed.SECONDS_PER_TURN.of(turn, question.feed());
    }
}

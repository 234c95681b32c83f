package setwright.plan.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import setwright.cutting.CuttingPower;
import setwright.cutting.Direction;
import setwright.cutting.KienzleForce;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.cutting.MillingCut;
import setwright.cutting.MillingCutter;
import setwright.cutting.MillingForce;
import setwright.cutting.MillingLoad;
import setwright.cutting.SpeedAndFeed;
import setwright.job.Operation;
import setwright.plan.part.MilledWidth;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.quantity.Worked;
import setwright.shop.Axis;
import setwright.shop.Cutter;

/** A milled operation of whatever kind: force over the turn, power, spring and the limits it uses up. */
final class MilledCut {
    private final CutQuestion question;
    private final Value feedPerTooth;
    private final MillingLoad load;
    private final ToolSpring spring;

    private MilledCut(CutQuestion question) {
        this.question = question;
        Value teeth = question.tool("teeth", question.cutter().teeth(), Unit.NONE, "teeth");
        feedPerTooth = SpeedAndFeed.FEED_PER_TOOTH.of(question.feed(), question.speed(), teeth);
        load = MillingForce.of(cut(), KienzleForce.of(question.kienzle(), cutter()))
                .load();
        spring = ToolSpring.of(question, load.peakResultant(), load.peakTorque(), depth() / 2);
    }

    static OperationCut of(CutQuestion question) {
        return new MilledCut(question).worked();
    }

    private MillingCutter cutter() {
        Cutter tool = question.cutter();
        return new MillingCutter(diameter(), tool.teeth(), tool.fluteHelix(), tool.edgeLead());
    }

    private MillingCut cut() {
        double feed = Math.max(feedPerTooth.inside(), 1e-6);
        var section = new MillingCut.Section(width(), depth());
        return facing() && lanes() == 1
                ? MillingCut.facing(cutter(), 0, section, feed)
                : MillingCut.of(cutter(), direction(), section, feed);
    }

    private Direction direction() {
        if (width() >= diameter() * (1 - 1e-9)) {
            return Direction.SLOT;
        }
        return question.operation().direction().value() == Operation.Direction.CLIMB
                ? Direction.CLIMB
                : Direction.CONVENTIONAL;
    }

    /** Of the edges that cut; a cone cuts a chamfer with what of it lies beside the wall. */
    private double diameter() {
        return question.operation().kind() == Operation.Kind.CHAMFER
                ? 2
                        * (MilledWidth.besideWall(question.cutter())
                                + question.operation().width().value().inside())
                : question.cutter().diameter().inside();
    }

    /** The first round of a pocket is cut in the full. */
    private double width() {
        return question.operation().kind() == Operation.Kind.POCKET
                ? diameter()
                : Math.min(question.operation().width().value().inside(), diameter());
    }

    private double depth() {
        double pass = question.operation().depth().value().inside();
        double whole = question.stage().workTop() - question.stage().lowest();
        return facing() ? pass : Math.min(pass, Math.max(whole, 0.01));
    }

    private int lanes() {
        return (int) Math.ceil(question.heights().depth() / width() - 1e-9);
    }

    private boolean facing() {
        return question.operation().kind() == Operation.Kind.FACE;
    }

    private int passes() {
        return facing() ? facingPasses() : question.stage().runs();
    }

    private int facingPasses() {
        double allowance = question.heights().startTop() - question.heights().finishedTop();
        return Math.max(1, (int) Math.ceil(allowance / depth() - 1e-6)) * lanes();
    }

    private OperationCut worked() {
        Value[] inputs = {
            question.kc11(),
            question.mc(),
            question.field("width of cut", width(), Unit.MM, "width"),
            question.field("depth of cut", depth(), Unit.MM, "depth"),
            question.diameter(),
            feedPerTooth
        };
        Worked torque = MillingForce.MEAN_TORQUE.of(load.meanTorque(), peakWords(), inputs);
        Worked peak = MillingForce.PEAK_FORCE.of(load.peakResultant(), peakWords(), inputs);
        Worked power = CuttingPower.POWER.of(torque, question.speed());
        return new OperationCut(
                question.operation().id(),
                question.speed(),
                question.wantedSpeed(),
                question.feed(),
                feedPerTooth,
                secondsPerTurn(),
                depth(),
                width(),
                passes(),
                power,
                torque,
                peak,
                null,
                load,
                spring.worked(),
                spring.band(),
                spring.leaves(),
                List.of(),
                limits(power));
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

    private List<Limit> limits(Value power) {
        List<Limit> limits = new ArrayList<>();
        limits.add(new Limit(LimitName.CUTTING_EDGE, question.shareOfCuttingSpeed()));
        limits.add(new Limit(LimitName.SPINDLE_POWER, power.inside() / question.spindlePower()));
        limits.add(new Limit(LimitName.CHIP_LOAD, feedPerTooth.inside() / mostFeed()));
        question.toleratedLean()
                .filter(half -> facing())
                .ifPresent(half -> limits.add(
                        new Limit(LimitName.TOOL_SPRING, spring.leaves().inside() / half)));
        limits.add(new Limit(LimitName.TOOL_BREAKAGE, spring.breakage()));
        limits.sort(Comparator.comparingDouble(Limit::used).reversed().thenComparing(Limit::name));
        return limits;
    }

    /** A tooth takes half as much again as the table's starting feed (common practice). */
    private double mostFeed() {
        return 1.5 * question.row().feedAt(diameter());
    }
}

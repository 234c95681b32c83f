package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.caution.Caution;
import setwright.caution.Check;
import setwright.caution.Figure;
import setwright.caution.Finding;
import setwright.caution.Margin;
import setwright.caution.Proposal;
import setwright.caution.Severity;
import setwright.geometry.Side;
import setwright.holding.GripLimits;
import setwright.job.Blank;
import setwright.plan.Plan;
import setwright.plan.cut.OperationCut;
import setwright.quantity.Unit;

/**
 * A round bar that stands between plain jaws is held on two lines, and nothing but friction keeps it from turning. One
 * caution a set-up, at the operation that turns it hardest.
 */
public final class RoundOnTwoLines implements Check {
    /** Friction of a smooth hardened jaw, expected (common practice). */
    private static final double FRICTION = 0.15;

    private static final GripLimits LIMITS = GripLimits.USUAL;

    @Override
    public String slug() {
        return "round-on-two-lines";
    }

    /** An operation and how many times its turning the two lines bear. */
    private record Turned(Operations.In in, double factor) {}

    @Override
    public List<Finding> look(Plan plan) {
        return Clamped.all(plan).stream()
                .filter(RoundOnTwoLines::standsRound)
                .filter(in -> !in.drawn().otherJaws())
                .map(in -> turned(in)
                        .min(java.util.Comparator.comparingDouble(Turned::factor))
                        .map(least -> judged(in, least))
                        .orElse(Finding.HOLDS))
                .toList();
    }

    private static boolean standsRound(Clamped in) {
        Blank.Kind kind = in.plan().job().plan().blank().kind();
        Side up = in.setUp().up().value();
        return (kind == Blank.Kind.ROUND_BAR || kind == Blank.Kind.TUBE) && (up == Side.TOP || up == Side.BOTTOM);
    }

    /** Both lines bear friction times grip, each at half the diameter. */
    private static Stream<Turned> turned(Clamped in) {
        double bears = FRICTION * in.grip() * in.heights().depth();
        return in.operations()
                .flatMap(operation -> in
                        .plan()
                        .cut()
                        .operation(operation.operation().id())
                        .stream()
                        .map(cut -> new Turned(operation, bears / Math.max(1, load(in, cut)))));
    }

    private static double load(Clamped in, OperationCut cut) {
        double side = Optional.ofNullable(cut.peakForce())
                .map(force -> force.inside())
                .orElse(0.0);
        return cut.torque().inside() + side * in.heights().depth() / 2;
    }

    private Finding judged(Clamped in, Turned least) {
        Operations.In at = least.in();
        Margin margin = Margin.of(
                slug(),
                Caution.Place.worstAt(at.setUp().id(), at.operation().id(), "bar", "the bar"),
                "Two lines of the jaws against " + at.cutter(),
                Figure.atLeast(LIMITS.cautionExpected(), least.factor(), Unit.NONE));
        if (margin.figure().holds()) {
            return Finding.holds(margin);
        }
        var printing = new Words(in.plan()).printing();
        return Finding.fails(
                margin,
                least.factor() < LIMITS.stopExpected() ? Severity.STOP : Severity.CAUTION,
                "The round bar touches plain jaws on two lines, which bear "
                        + printing.factor(least.factor()) + " times what " + at.cutter() + " turns it with "
                        + at.at() + "; " + printing.factor(LIMITS.cautionExpected())
                        + " times are asked. It turns in the vise and takes the cutter with it: grip it in a vee,"
                        + " in soft jaws bored to it or in a collet block.");
    }

    @Override
    public List<Proposal> proposals(Plan plan, Caution caution) {
        return Stream.of(
                        new JawChanges(plan, caution.setUp()).soft(),
                        new GripChanges(plan, caution.setUp()).harder(),
                        CutChanges.of(plan, caution).shallower())
                .flatMap(List::stream)
                .toList();
    }
}

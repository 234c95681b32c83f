package setwright.plan.cut;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import setwright.cutting.KienzleForce;
import setwright.cutting.MillingCut;
import setwright.cutting.Selector;
import setwright.plan.cut.Stability.Basis;
import setwright.plan.cut.Stability.Way;
import setwright.quantity.Band;
import setwright.quantity.Given;
import setwright.quantity.Typed;
import setwright.quantity.Unit;
import setwright.quantity.Value;
import setwright.rigidity.stability.Mode;
import setwright.rigidity.stability.ToothCut;
import setwright.rigidity.stability.Waves;
import setwright.rigidity.stability.ZeroOrder;
import setwright.shop.Machine;

/** Works out how near milling passes are to ringing: quickly while somebody types, tooth by tooth afterwards. */
public final class Stabilities {
    /** A speed is offered where the pass is quiet by this much (common practice). */
    private static final double SURE = 1.1;

    /** Speeds of a stepless drive that are looked at. */
    private static final int SPEEDS = 60;

    private Stabilities() {}

    /** @return null where the spindle stands still */
    static @Nullable Stability of(CutQuestion question, MillingCut cut) {
        double speed = question.operation().speed().value().inside();
        if (speed <= 0) {
            return null;
        }
        return of(question, cut, ToolModes.of(question));
    }

    /** @return null where nobody tapped the tool, or the spindle stands still */
    static @Nullable Stability measured(CutQuestion question, MillingCut cut) {
        return question.operation().speed().value().inside() <= 0
                ? null
                : ToolModes.tapped(question)
                        .map(tested -> of(question, cut, ToolModes.measured(tested)))
                        .orElse(null);
    }

    private static Stability of(CutQuestion question, MillingCut cut, ToolModes modes) {
        double speed = question.operation().speed().value().inside();
        ToothCut teeth = new ToothCut(
                cut.cutter().teeth(),
                cut.engagement(),
                question.kienzle().specificForce(cut.meanChip()),
                KienzleForce.ORDINARY_RADIAL_RATIO);
        RingingCut ringing = new RingingCut(
                teeth, modes.x(), modes.y(), modes.soft(), modes.stiff(), modes.measured(), speed, cut.axialDepth());
        Value waves = waves(question, ringing);
        return modes.measured() || waves.inside() < Waves.MOST_TO_AIM
                ? quick(question, ringing, waves)
                : new Stability(basis(ringing), waves, null, null, Way.NOT_PREDICTABLE, null, ringing);
    }

    private static Value waves(CutQuestion question, RingingCut ringing) {
        Mode mode = ringing.weaker();
        String from = ringing.measured() ? "a tap test of this tool" : "beam, springs and masses: an estimate";
        return Waves.BETWEEN_TEETH.of(
                Given.of("natural frequency of the tip", mode.hertz(), Unit.HZ, from),
                question.tool("teeth", question.cutter().teeth(), Unit.NONE, "teeth"),
                question.speed());
    }

    private static Basis basis(RingingCut ringing) {
        return ringing.measured() ? Basis.MEASURED : Basis.ESTIMATED;
    }

    private static Stability quick(CutQuestion question, RingingCut ringing, Value waves) {
        RingingCut.Quick border = ringing.quick();
        Band depth = ringing.quickBand();
        Double advice = depth.expected() >= ringing.depth()
                ? null
                : nearest(question, ringing, speed -> border.depthAt(speed) >= SURE * ringing.depth())
                        .orElse(null);
        return new Stability(basis(ringing), waves, depth, ringing.smallestDepth(), Way.ZERO_ORDER, advice, ringing);
    }

    /** The speed of this machine that is nearest to the one set, quiet, and no faster than the edge stands. */
    private static Optional<Double> nearest(CutQuestion question, RingingCut ringing, DoublePredicate quiet) {
        double most = question.wantedSpeed().inside()
                * Selector.Wanted.mostOver(question.cutter().material());
        return speeds(question.rows().machine())
                .filter(speed -> speed <= most && quiet.test(speed))
                .boxed()
                .min(Comparator.comparingDouble(speed -> Math.abs(StrictMath.log(speed / ringing.speed()))));
    }

    private static DoubleStream speeds(Machine machine) {
        Typed<?> least = machine.speedLeast();
        Typed<?> greatest = machine.speedGreatest();
        if (least == null || greatest == null) {
            return machine.steps().stream().mapToDouble(Typed::inside);
        }
        double ratio = StrictMath.pow(greatest.inside() / least.inside(), 1.0 / SPEEDS);
        return DoubleStream.iterate(least.inside(), speed -> speed * ratio).limit(SPEEDS + 1L);
    }

    /** Whether the quick answer is not the last word: few waves between teeth, or a cut too narrow for it. */
    static boolean unsettled(Stability stability) {
        boolean narrow = stability.question().cut().immersion() < ZeroOrder.LEAST_IMMERSION;
        return stability.way() == Way.ZERO_ORDER && (narrow || stability.waves().inside() < Waves.MOST_TO_AIM);
    }

    /**
     * The same tooth by tooth. The band keeps its shape; a speed is only offered where the pass is quiet this way too.
     */
    static Stability stepped(Stability quick) {
        RingingCut ringing = quick.question();
        Band band = quick.depth();
        double depth = ringing.steppedDepth();
        Double advice = quick.quietSpeed();
        boolean offered = advice != null && depth < ringing.depth() && !ringing.rings(advice);
        return new Stability(
                quick.basis(),
                quick.waves(),
                band == null ? null : band.times(depth / band.expected()),
                quick.everywhere(),
                Way.STEPPED,
                offered ? advice : null,
                ringing);
    }
}

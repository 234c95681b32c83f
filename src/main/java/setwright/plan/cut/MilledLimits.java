package setwright.plan.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import setwright.cutting.Limit;
import setwright.cutting.LimitName;
import setwright.cutting.MillingBounds;
import setwright.cutting.MillingLoad;
import setwright.cutting.SafeSpeed;
import setwright.holding.ShankGrip;
import setwright.job.Feature;
import setwright.job.Operation;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.Slot;
import setwright.job.Step;
import setwright.quantity.Band;
import setwright.quantity.Length;
import setwright.quantity.Typed;

/** Every limit of a milled operation, with the share that it uses up. */
record MilledLimits(
        CutQuestion question,
        MillingLoad load,
        ToolSpring spring,
        @Nullable Stability stability) {

    private static final List<LimitName> LOADS = List.of(
            LimitName.SPINDLE_POWER,
            LimitName.SPINDLE_TORQUE,
            LimitName.BELT,
            LimitName.TOOL_BREAKAGE,
            LimitName.SHANK_GRIP,
            LimitName.SHANK_PULL_OUT);

    /** The one used up most first. */
    List<Limit> used() {
        List<Limit> limits = new ArrayList<>();
        double speed = question.speed().inside();
        if (speed > 0) {
            double thickest = MilledExtremes.thickest(question, null, load.cut().largestChip());
            limits.addAll(bounds().used(load, speed, thickest));
        }
        question.toleratedLean()
                .filter(half -> question.operation().kind() == Operation.Kind.FACE)
                .ifPresent(half -> limits.add(new Limit(
                        LimitName.TOOL_SPRING, Math.abs(spring.leaves().inside()) / half)));
        SpringShare.of(question, load.cut()).ifPresent(used -> limits.add(new Limit(LimitName.TOOL_SPRING, used)));
        limits.add(new Limit(LimitName.TOOL_BREAKAGE, spring.breakage()));
        chatter().ifPresent(limits::add);
        question.holder().flatMap(ShankHold::of).ifPresent(grip -> shank(grip, limits));
        limits.sort(Comparator.comparingDouble(Limit::used).reversed().thenComparing(Limit::name));
        return limits;
    }

    /** Of two passes that follow each other the heavier, limit by limit; chip and feed are those of the first. */
    static List<Limit> both(List<Limit> first, List<Limit> second) {
        List<Limit> all = new ArrayList<>();
        for (Limit one : first) {
            double used = second.stream()
                    .filter(other -> LOADS.contains(one.name()) && other.name() == one.name())
                    .mapToDouble(Limit::used)
                    .reduce(one.used(), Math::max);
            all.add(new Limit(one.name(), used));
        }
        all.sort(Comparator.comparingDouble(Limit::used).reversed().thenComparing(Limit::name));
        return all;
    }

    /** An estimated mode is too wide a band to be a limit; a measured one is. */
    private Optional<Limit> chatter() {
        return Optional.ofNullable(stability)
                .filter(known -> known.basis() == Stability.Basis.MEASURED)
                .flatMap(known -> known.quietDepth().map(quiet -> load.cut().axialDepth() / quiet))
                .map(used -> new Limit(LimitName.CHATTER, used));
    }

    private MillingBounds bounds() {
        MillingBounds bounds = MillingBounds.of(
                question.cutter().material(),
                load.cut().cutter().diameter(),
                question.row(),
                question.rows().machine());
        bounds = SafeSpeed.of(question.cutter(), question.holder().orElse(null))
                .map(SafeSpeed::most)
                .map(bounds::notFasterThan)
                .orElse(bounds);
        OptionalDouble asked = roughness();
        return asked.isPresent() ? bounds.asFineAs(asked.getAsDouble()) : bounds;
    }

    /** The grip on a bad day against the mean pull of the helix and the largest torque; every other holder drives. */
    private void shank(Band grip, List<Limit> limits) {
        double slips =
                ShankGrip.slipTorque(grip.low(), question.cutter().shank().inside());
        limits.add(new Limit(LimitName.SHANK_GRIP, load.peakTorque() / slips));
        limits.add(new Limit(LimitName.SHANK_PULL_OUT, Math.max(0, load.mean().axial()) / grip.low()));
    }

    /** The finest that the walls are asked, mm. */
    private OptionalDouble roughness() {
        return question.features()
                .flatMap(feature -> finish(feature).stream())
                .mapToDouble(Typed::inside)
                .min();
    }

    private static Optional<Typed<Length>> finish(Feature feature) {
        return switch (feature.kind()) {
            case STEP -> Optional.ofNullable(((Step) feature).finish());
            case SLOT -> Optional.ofNullable(((Slot) feature).finish());
            case POCKET -> Optional.ofNullable(((Pocket) feature).finish());
            case PROFILE -> Optional.ofNullable(((ProfileCut) feature).finish());
            default -> Optional.empty();
        };
    }
}

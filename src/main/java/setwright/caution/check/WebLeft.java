package setwright.caution.check;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.caution.Caution;
import setwright.caution.Proposal;
import setwright.job.ArcSlot;
import setwright.job.Feature;
import setwright.job.Job;
import setwright.job.Pocket;
import setwright.job.ProfileCut;
import setwright.job.Size;
import setwright.job.Slit;
import setwright.job.Slot;
import setwright.plan.Plan;
import setwright.plan.part.Lying;

/** A through cut that stops short, so that what it would free hangs on until it is broken out. */
record WebLeft(Plan plan) {
    /** Thickness of the web, mm (common practice). */
    private static final double WEB = 0.5;

    List<Proposal> proposals(Caution caution) {
        return Operations.operation(plan, caution.setUp(), caution.operation()).features().stream()
                .flatMap(id -> plan.job().plan().features().stream()
                        .filter(feature -> feature.id().equals(id)))
                .flatMap(feature -> stopping(feature).stream())
                .toList();
    }

    private Optional<Proposal> stopping(Feature feature) {
        double thick = Lying.of(plan.job().plan().blank().envelope(), feature.side(), 0)
                .upright()
                .nominal()
                .inside();
        Size depth = Size.of(new Words(plan).typed(thick - WEB));
        return Optional.ofNullable(deep(feature, depth))
                .map(changed -> new Proposal(
                        Proposal.Way.DEPTH,
                        "Take it " + depth.nominal().text() + " deep and leave a web of " + new Words(plan).length(WEB)
                                + ", to be broken out and filed.",
                        with(changed)));
    }

    private Job with(Feature changed) {
        Job job = plan.job();
        return job.withPlan(job.plan()
                .withFeatures(job.plan().features().stream()
                        .map(one -> one.id().equals(changed.id()) ? changed : one)
                        .toList()));
    }

    private static @Nullable Feature deep(Feature feature, Size depth) {
        return switch (feature.kind()) {
            case SLIT -> {
                Slit it = (Slit) feature;
                yield new Slit(
                        it.id(),
                        it.note(),
                        it.side(),
                        it.width(),
                        depth,
                        it.length(),
                        it.place(),
                        it.finish(),
                        it.got());
            }
            case PROFILE -> {
                ProfileCut it = (ProfileCut) feature;
                yield new ProfileCut(
                        it.id(), it.note(), it.side(), it.inside(), it.corners(), depth, it.finish(), it.got());
            }
            case SLOT -> {
                Slot it = (Slot) feature;
                yield new Slot(
                        it.id(),
                        it.note(),
                        it.side(),
                        it.width(),
                        depth,
                        it.length(),
                        it.place(),
                        it.finish(),
                        it.got());
            }
            case ARC_SLOT -> {
                ArcSlot it = (ArcSlot) feature;
                yield new ArcSlot(
                        it.id(),
                        it.note(),
                        it.side(),
                        it.width(),
                        depth,
                        it.radius(),
                        it.centre(),
                        it.from(),
                        it.to(),
                        it.finish(),
                        it.got());
            }
            case POCKET -> {
                Pocket it = (Pocket) feature;
                yield new Pocket(
                        it.id(),
                        it.note(),
                        it.side(),
                        it.length(),
                        it.width(),
                        depth,
                        it.corner(),
                        it.place(),
                        it.finish(),
                        it.got());
            }
            default -> null;
        };
    }
}

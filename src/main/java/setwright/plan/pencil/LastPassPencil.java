package setwright.plan.pencil;

import java.util.List;
import java.util.Optional;
import setwright.job.ArcSlot;
import setwright.job.Feature;
import setwright.job.Keyseat;
import setwright.job.Operation;
import setwright.job.Slot;
import setwright.plan.cut.Tolerated;
import setwright.shop.Cutter;

/** What is left for the last pass, and whether one without infeed follows (common practice). */
record LastPassPencil(Drafting drafting, Operation operation, Optional<Cutter> cutter) {
    /** Left on the radius of a bored hole, mm: enough to measure, cut half and still have a chip. */
    private static final double IN_A_BORE = 0.25;

    /** Left on a toleranced wall, mm. */
    private static final double ON_A_WALL = 0.25;

    /** A slot that is wider than its cutter by less has its walls at once, mm. */
    private static final double AT_SIZE = 2 * ON_A_WALL;

    double finish() {
        return switch (operation.kind()) {
            case BORE -> IN_A_BORE;
            case STEP, PROFILE, POCKET, SLOT, KEYSEAT -> toleranced() && !atSize() ? ON_A_WALL : 0;
            default -> 0;
        };
    }

    Operation.LastPass lastPass() {
        return operation.kind() == Operation.Kind.BORE
                ? Operation.LastPass.WITH_SPRING_PASS
                : finish() > 0 ? Operation.LastPass.ONE : Operation.LastPass.NONE;
    }

    private boolean toleranced() {
        return Tolerated.of(features().stream()).isPresent();
    }

    private boolean atSize() {
        double diameter = cutter.map(tool -> tool.diameter().inside()).orElse(0.0);
        return features().stream().anyMatch(feature -> width(feature) - diameter < AT_SIZE);
    }

    private List<Feature> features() {
        return operation.features().stream()
                .flatMap(id -> drafting.feature(id).stream())
                .toList();
    }

    private static double width(Feature feature) {
        return switch (feature.kind()) {
            case SLOT -> ((Slot) feature).width().nominal().inside();
            case KEYSEAT -> ((Keyseat) feature).width().nominal().inside();
            case ARC_SLOT -> ((ArcSlot) feature).width().nominal().inside();
            default -> Double.POSITIVE_INFINITY;
        };
    }
}

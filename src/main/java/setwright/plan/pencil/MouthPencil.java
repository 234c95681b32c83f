package setwright.plan.pencil;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import setwright.job.Hole;
import setwright.job.Operation;
import setwright.plan.Rows;
import setwright.plan.part.Mouths;
import setwright.shop.BoringBar;
import setwright.shop.Counterbore;
import setwright.shop.Countersink;
import setwright.shop.Cutter;
import setwright.shop.EndMill;
import setwright.shop.ShopRow;
import setwright.shop.SpotDrill;

/** The tool that opens a hole or its mouth. */
final class MouthPencil {
    private static final double SAME = 0.05;
    private static final double SAME_ANGLE = StrictMath.toRadians(0.5);

    private final Drafting drafting;
    private final CutterPencil owned;

    MouthPencil(Drafting drafting) {
        this.drafting = drafting;
        owned = new CutterPencil(drafting);
    }

    String choose(Operation.Kind kind, Hole hole) {
        Optional<? extends Cutter> found = switch (kind) {
            case BORE -> bar(hole);
            case COUNTERBORE -> counterbore(hole);
            case SPOTFACE -> spotface(hole);
            case COUNTERSINK -> countersink(hole);
            default -> Optional.empty();
        };
        return found.map(ShopRow::id).orElse(Rows.NOTHING);
    }

    /** The smallest that covers the mouth at its angle; else a spot drill of that angle. */
    Optional<Cutter> countersink(Hole hole) {
        return smallest(owned.owned(Countersink.class), hole)
                .or(() -> hole.mouth() == null ? Optional.empty() : smallest(owned.owned(SpotDrill.class), hole));
    }

    private Optional<Cutter> smallest(Stream<? extends Cutter> tools, Hole hole) {
        return tools.<Cutter>map(tool -> tool)
                .filter(tool -> Math.abs(Mouths.coneAngle(tool) - Mouths.angle(hole)) < SAME_ANGLE)
                .filter(tool -> tool.diameter().inside() >= Mouths.mouth(hole) - SAME)
                .filter(owned::usable)
                .min(bySize());
    }

    private Optional<Cutter> counterbore(Hole hole) {
        double mouth = Mouths.mouth(hole);
        return counterbores(hole)
                .filter(tool -> Math.abs(tool.diameter().inside() - mouth) <= SAME)
                .min(bySize())
                .or(() -> endMills()
                        .filter(tool -> Math.abs(tool.diameter().inside() - mouth) <= SAME)
                        .min(bySize()));
    }

    private Optional<Cutter> spotface(Hole hole) {
        double mouth = Mouths.mouth(hole) - SAME;
        return counterbores(hole)
                .filter(tool -> tool.diameter().inside() >= mouth)
                .min(bySize())
                .or(() -> endMills()
                        .filter(tool -> tool.diameter().inside() >= mouth)
                        .min(bySize()));
    }

    private Stream<Cutter> counterbores(Hole hole) {
        return owned.owned(Counterbore.class)
                .filter(tool -> !tool.fromBehind())
                .filter(tool ->
                        tool.pilotDiameter().inside() <= hole.size().nominal().inside() + SAME)
                .filter(owned::usable)
                .map(tool -> tool);
    }

    private Stream<Cutter> endMills() {
        return owned.owned(EndMill.class)
                .filter(EndMill::centreCutting)
                .filter(owned::usable)
                .map(tool -> tool);
    }

    private static Comparator<Cutter> bySize() {
        return Comparator.comparingDouble((Cutter tool) -> tool.diameter().inside())
                .thenComparing(ShopRow::id);
    }

    /** The stoutest bar that goes into the drilled hole and reaches its depth. */
    private Optional<BoringBar> bar(Hole hole) {
        double depth = Optional.ofNullable(hole.depth())
                .map(size -> size.nominal().inside())
                .orElse(drafting.block().height().nominal().inside());
        double drilled = Stream.concat(Stream.of(owned.drilling(hole)), drafting.written(Operation.Kind.DRILL, hole))
                .flatMap(drill -> drafting.rows().cutter(drill).stream())
                .mapToDouble(drill -> drill.diameter().inside())
                .filter(drill -> drill < hole.size().nominal().inside())
                .max()
                .orElse(0);
        return owned.owned(BoringBar.class)
                .filter(bar -> bar.diameter().inside() <= drilled)
                .filter(owned::usable)
                .min(Comparator.comparing((BoringBar bar) -> bar.reach().inside() < depth)
                        .thenComparingDouble(bar -> -bar.neckDiameter().inside())
                        .thenComparing(ShopRow::id));
    }
}

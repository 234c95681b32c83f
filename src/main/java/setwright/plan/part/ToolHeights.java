package setwright.plan.part;

import java.util.Optional;
import setwright.geometry.Point3;
import setwright.job.DrawnOperation;
import setwright.job.DrawnSetUp;
import setwright.job.Operation;
import setwright.plan.Rows;
import setwright.shop.Cutter;
import setwright.shop.Holder;

/**
 * The heights that an operation's tool point takes, mm over the table.
 *
 * @param workTop height of the surface it starts from
 * @param lowest lowest height of the tool point
 * @param crossing height that the point keeps between features
 * @param projection spindle nose to tool point
 */
public record ToolHeights(double workTop, double lowest, double crossing, double projection) {
    /** Between features the point stays this far over the highest thing (common practice for moves by hand). */
    public static final double CROSSING_OVER = 10;

    /** Empty where cutter or holder is missing. */
    public static Optional<ToolHeights> of(DrawnSetUp setUp, DrawnOperation operation, Heights heights, Rows rows) {
        Optional<Cutter> cutter = rows.cutter(operation.cutter().value());
        Optional<Holder> holder = rows.holder(operation.holder().value());
        if (cutter.isEmpty() || holder.isEmpty()) {
            return Optional.empty();
        }
        double top = workTop(setUp, operation, heights);
        double projection = holder.get().projection().inside()
                + operation.stickOut().value().inside();
        double crossing = Math.max(top, heights.jawTop()) + CROSSING_OVER;
        double lowest = lowest(setUp, operation, cutter.get(), heights, top, rows);
        return Optional.of(new ToolHeights(top, lowest, crossing, projection));
    }

    /** Over the middle of the part at the crossing height. */
    Point3 waiting(Heights heights) {
        return new Point3((heights.left() + heights.right()) / 2, (heights.front() + heights.back()) / 2, crossing);
    }

    private static double workTop(DrawnSetUp setUp, DrawnOperation operation, Heights heights) {
        boolean faced = setUp.operations().stream()
                .takeWhile(earlier -> !earlier.id().equals(operation.id()))
                .anyMatch(earlier -> earlier.kind() == Operation.Kind.FACE);
        return faced ? heights.finishedTop() : heights.startTop();
    }

    private static double lowest(
            DrawnSetUp setUp, DrawnOperation operation, Cutter cutter, Heights heights, double top, Rows rows) {
        if (operation.kind().inHole()) {
            return Holes.of(operation, rows.job())
                    .mapToDouble(hole -> top - HoleDepths.of(operation, cutter, hole, top - heights.partBottom()))
                    .min()
                    .orElse(top);
        }
        MilledFeatures features = MilledFeatures.of(setUp, operation, cutter, heights, rows.job());
        if (features.facesAll()) {
            return heights.finishedTop();
        }
        return features.all().stream()
                .flatMap(feature -> features.floor(feature).stream())
                .mapToDouble(floor -> Math.min(floor, top))
                .min()
                .orElse(top);
    }
}

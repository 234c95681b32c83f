package setwright.plan.cut;

import java.util.Optional;
import java.util.stream.Stream;
import setwright.geometry.Box;
import setwright.geometry.Stock;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;
import setwright.geometry.plane.Region;
import setwright.job.DrawnHolding;
import setwright.plan.part.SetUpStage;

/**
 * A wall that a cut leaves standing beside it.
 *
 * @param thickness at its middle, mm
 * @param height that nothing stands behind, mm
 * @param length along the cut, mm
 */
record WallBeside(double thickness, double height, double length) {
    private static final double STEP = 0.25;

    /** Thinner than its height: else it is no wall but a block. */
    private static final double NO_WALL = 1;

    /** The side that gives most; empty where all that is left is stout. */
    static Optional<WallBeside> thinnest(Stock after, Box gone, SetUpStage stage, DrawnHolding.Kind holding) {
        PlanBox cut = gone.plan();
        if (cut.isEmpty()) {
            return Optional.empty();
        }
        double top = stage.heights().finishedTop();
        double middle = (Math.max(gone.zLow(), stage.heights().partBottom()) + top) / 2;
        Region material = after.shadow(middle, middle);
        double low = Math.max(gone.zLow(), stage.heights().partBottom());
        double free = holding == DrawnHolding.Kind.VISE
                ? Math.max(low, stage.heights().jawTop())
                : low;
        return Stream.of(
                        wall(
                                material,
                                new Point2(cut.xLow(), cut.middle().y()),
                                new Point2(-1, 0),
                                top - low,
                                cut.depth()),
                        wall(
                                material,
                                new Point2(cut.xHigh(), cut.middle().y()),
                                new Point2(1, 0),
                                top - low,
                                cut.depth()),
                        wall(
                                material,
                                new Point2(cut.middle().x(), cut.yLow()),
                                new Point2(0, -1),
                                top - free,
                                cut.length()),
                        wall(
                                material,
                                new Point2(cut.middle().x(), cut.yHigh()),
                                new Point2(0, 1),
                                top - free,
                                cut.length()))
                .flatMap(Optional::stream)
                .reduce((one, other) -> other.slender() > one.slender() ? other : one);
    }

    private double slender() {
        return height / thickness;
    }

    private static Optional<WallBeside> wall(Region material, Point2 from, Point2 way, double height, double length) {
        double thick = 0;
        while (thick < height && material.contains(at(from, way, thick + STEP / 2))) {
            thick += STEP;
        }
        return thick > 0 && height > 0 && length > 0 && thick < NO_WALL * height
                ? Optional.of(new WallBeside(thick, height, length))
                : Optional.empty();
    }

    private static Point2 at(Point2 from, Point2 way, double far) {
        return new Point2(from.x() + far * way.x(), from.y() + far * way.y());
    }
}

package setwright.plan.part;

import java.util.List;
import java.util.Optional;
import setwright.geometry.Solid;
import setwright.geometry.Stock;
import setwright.geometry.ToolPath;
import setwright.geometry.ToolStack;
import setwright.geometry.UprightCone;
import setwright.geometry.UprightCylinder;
import setwright.geometry.plane.Point2;

/**
 * One operation on the part as it stands.
 *
 * @param before stock before it
 * @param after stock after it
 * @param tool from the tool point up to nose and quill
 * @param path of the tool point
 * @param spots where it goes down, for holes; X and Y on the table; empty for milling
 * @param workTop height of the surface it starts from
 * @param lowest lowest height of its tool point
 * @param crossing height that its tool point keeps between features
 * @param projection spindle nose to tool point
 * @param cutLength length of path in the cut, all features and all positions, mm
 * @param runs how often the cutter goes into a cut: passes in depth times lanes times positions; holes as many as there are
 */
public record OperationStage(
        String operation,
        Stock before,
        Stock after,
        ToolStack tool,
        ToolPath path,
        List<Point2> spots,
        double workTop,
        double lowest,
        double crossing,
        double projection,
        double cutLength,
        int runs) {
    /** Two holes are the same hole where their middles are nearer than this, mm. */
    private static final double SAME_PLACE = 0.01;

    public OperationStage {
        spots = List.copyOf(spots);
    }

    /** Diameter of the largest hole that earlier operations left where this one goes down, mm; the cone of a spot is none. */
    public Optional<Double> holeBefore() {
        return before.cuts().stream()
                .filter(UprightCylinder.class::isInstance)
                .map(UprightCylinder.class::cast)
                .filter(hole -> hole.zLow() < workTop - SAME_PLACE)
                .filter(hole -> spots.stream().anyMatch(spot -> spot.distance(hole.axis()) < SAME_PLACE))
                .map(hole -> 2 * hole.radius())
                .max(Double::compare);
    }

    /** Whether an earlier spot or hole leads the tool where it first goes down. */
    public boolean marked() {
        return before.cuts().stream()
                .anyMatch(cut -> axis(cut)
                        .filter(axis -> spots.stream().anyMatch(spot -> spot.distance(axis) < SAME_PLACE))
                        .isPresent());
    }

    private static Optional<Point2> axis(Solid cut) {
        if (cut instanceof UprightCone cone) {
            return Optional.of(cone.axis());
        }
        return cut instanceof UprightCylinder cylinder ? Optional.of(cylinder.axis()) : Optional.empty();
    }

    /** The same with its lowest point elsewhere. */
    public OperationStage downTo(double height) {
        return new OperationStage(
                operation, before, after, tool, path, spots, workTop, height, crossing, projection, cutLength, runs);
    }
}

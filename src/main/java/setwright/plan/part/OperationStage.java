package setwright.plan.part;

import java.util.List;
import setwright.geometry.Stock;
import setwright.geometry.ToolPath;
import setwright.geometry.ToolStack;
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
 * @param cutLength length of path in the cut, all features, mm
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
        double cutLength) {
    public OperationStage {
        spots = List.copyOf(spots);
    }
}

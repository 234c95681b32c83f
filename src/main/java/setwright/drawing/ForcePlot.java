package setwright.drawing;

import java.util.List;
import setwright.cutting.CutForce;
import setwright.cutting.ForcePolygon;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/**
 * The force on the cutter over a turn, as a line round the axis: the feed to the right, across it up. Drawn so large that
 * the largest force is {@link #REACH} from the middle.
 */
public final class ForcePlot {
    /** From the middle to the largest force, mm on the paper. */
    public static final double REACH = 40;

    private static final double MARGIN = 6;

    private ForcePlot() {}

    /** @param even without run-out, drawn thin; the other with it, drawn thick */
    public static Drawing of(ForcePolygon even, ForcePolygon runningOut, String largest) {
        double scale = REACH / Math.max(1e-9, Math.max(even.largest(), runningOut.largest()));
        double edge = REACH + MARGIN;
        Pen pen = new Pen();
        pen.line(LineRole.CENTRE, new Point2(-edge, 0), new Point2(edge, 0));
        pen.line(LineRole.CENTRE, new Point2(0, -edge), new Point2(0, edge));
        pen.line(LineRole.THIN, line(even, scale));
        pen.line(LineRole.VISIBLE, line(runningOut, scale));
        pen.add(new Mark.Text(new Point2(edge, 0), Mark.Anchor.LEFT, Mark.Lettering.SMALL, "feed"));
        pen.add(new Mark.Text(new Point2(0, edge), Mark.Anchor.ABOVE, Mark.Lettering.SMALL, "across"));
        pen.add(new Mark.CallOut(farthest(runningOut, scale), largest));
        return pen.drawing(new PlanBox(-edge, -edge, edge, edge));
    }

    private static List<Point2> line(ForcePolygon polygon, double scale) {
        return polygon.moments().stream()
                .map(moment -> at(moment.force(), scale))
                .toList();
    }

    private static Point2 farthest(ForcePolygon polygon, double scale) {
        return polygon.moments().stream()
                .max((one, other) ->
                        Double.compare(one.force().resultant(), other.force().resultant()))
                .map(moment -> at(moment.force(), scale))
                .orElse(Point2.ORIGIN);
    }

    private static Point2 at(CutForce force, double scale) {
        return new Point2(scale * force.feed(), scale * force.cross());
    }
}

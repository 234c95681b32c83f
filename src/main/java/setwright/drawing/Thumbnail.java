package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.Box;
import setwright.geometry.Prism;
import setwright.geometry.Stock;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;
import setwright.plan.Plan;
import setwright.plan.part.OperationStage;

/** A small picture of the part as it stands after a set-up, drawn obliquely: its front as it is, its depth set back. */
public final class Thumbnail {
    private static final double DEPTH_RIGHT = 0.42;
    private static final double DEPTH_UP = 0.36;
    private static final int CORNERS = 16;

    private Thumbnail() {}

    /** Empty where the set-up could not be laid out. */
    public static Drawing of(Plan plan, String setUp) {
        return plan.part()
                .setUp(setUp)
                .map(stage -> of(after(stage.operations(), stage.start())))
                .orElse(Drawing.EMPTY);
    }

    private static Stock after(List<OperationStage> operations, Stock start) {
        return operations.isEmpty()
                ? start
                : operations.get(operations.size() - 1).after();
    }

    private static Drawing of(Stock stock) {
        Pen pen = new Pen();
        Box box = stock.blank().box();
        double top = stock.top();
        List<Point2> front = List.of(
                at(box.low().x(), box.low().y(), box.zLow()),
                at(box.high().x(), box.low().y(), box.zLow()),
                at(box.high().x(), box.low().y(), top),
                at(box.low().x(), box.low().y(), top));
        List<Point2> right = List.of(
                front.get(1),
                at(box.high().x(), box.high().y(), box.zLow()),
                at(box.high().x(), box.high().y(), top),
                front.get(2));
        face(pen, front);
        face(pen, right);
        List<Prism> layers = stock.layers();
        if (!layers.isEmpty()) {
            top(pen, layers.get(layers.size() - 1), top);
        }
        return Drawing.of(pen.drawing(setwright.geometry.plane.PlanBox.EMPTY).marks());
    }

    private static void face(Pen pen, List<Point2> corners) {
        pen.fill(Fill.PART, corners);
        pen.closed(LineRole.VISIBLE, corners);
    }

    private static void top(Pen pen, Prism layer, double top) {
        for (Outline outer : layer.region().outers()) {
            face(pen, drawn(outer, top));
        }
        for (Outline hole : layer.region().holes()) {
            List<Point2> rim = drawn(hole, top);
            pen.fill(Fill.OPEN, rim);
            pen.closed(LineRole.VISIBLE, rim);
        }
    }

    private static List<Point2> drawn(Outline outline, double z) {
        List<Point2> points = new ArrayList<>();
        for (Edge edge : outline.edges()) {
            int count = edge.kind() == Edge.Kind.ARC ? CORNERS : 1;
            for (int i = 0; i < count; i++) {
                Point2 place = edge.at((double) i / count);
                points.add(at(place.x(), place.y(), z));
            }
        }
        return points;
    }

    private static Point2 at(double x, double y, double z) {
        return new Point2(x + DEPTH_RIGHT * y, z + DEPTH_UP * y);
    }
}

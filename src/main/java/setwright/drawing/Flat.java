package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Arc;
import setwright.geometry.plane.Edge;
import setwright.geometry.plane.Outline;
import setwright.geometry.plane.Point2;

/** An outline as corners, its arcs in short straight strokes. */
final class Flat {
    /** Strokes of a whole turn. */
    private static final int STROKES = 72;

    private Flat() {}

    static List<Point2> points(Outline outline) {
        List<Point2> points = new ArrayList<>();
        for (Edge edge : outline.edges()) {
            points.add(edge.from());
            if (edge instanceof Arc arc) {
                along(points, arc);
            }
        }
        return points;
    }

    private static void along(List<Point2> points, Arc arc) {
        double from = angle(arc, arc.from());
        double sweep = angle(arc, arc.to()) - from;
        double turn = 2 * Math.PI;
        if (arc.anticlockwise() && sweep <= 0) {
            sweep += turn;
        } else if (!arc.anticlockwise() && sweep >= 0) {
            sweep -= turn;
        }
        int strokes = (int) Math.ceil(Math.abs(sweep) / turn * STROKES);
        for (int i = 1; i < strokes; i++) {
            double at = from + sweep * i / strokes;
            points.add(arc.centre().plus(new Point2(StrictMath.cos(at), StrictMath.sin(at)).times(arc.radius())));
        }
    }

    private static double angle(Arc arc, Point2 at) {
        Point2 out = at.minus(arc.centre());
        return StrictMath.atan2(out.y(), out.x());
    }
}

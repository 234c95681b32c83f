package setwright.drawing;

import java.util.List;
import setwright.geometry.plane.PlanBox;
import setwright.geometry.plane.Point2;

/** What marks of many points have in common. */
final class Moved {
    private Moved() {}

    static List<Point2> all(List<Point2> points, Point2 by) {
        return points.stream().map(point -> point.plus(by)).toList();
    }

    static PlanBox box(List<Point2> points) {
        PlanBox box = PlanBox.EMPTY;
        for (Point2 point : points) {
            box = box.and(point);
        }
        return box;
    }
}

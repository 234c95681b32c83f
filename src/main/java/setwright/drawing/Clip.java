package setwright.drawing;

import java.util.ArrayList;
import java.util.List;
import setwright.geometry.plane.Point2;

/** What of a convex area lies in an upright rectangle. */
record Clip(Span across, Span up) {
    /** The corners of what is left; none where nothing is. */
    List<Point2> of(List<Point2> corners) {
        List<Point2> left = cut(corners, new Point2(1, 0), across.low());
        left = cut(left, new Point2(-1, 0), -across.high());
        left = cut(left, new Point2(0, 1), up.low());
        return cut(left, new Point2(0, -1), -up.high());
    }

    /** Keeps what lies at least so far in a direction. */
    private static List<Point2> cut(List<Point2> corners, Point2 direction, double least) {
        List<Point2> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point2 here = corners.get(i);
            Point2 next = corners.get((i + 1) % corners.size());
            double inside = here.dot(direction) - least;
            double then = next.dot(direction) - least;
            if (inside >= 0) {
                kept.add(here);
            }
            if (inside * then < 0) {
                kept.add(here.plus(next.minus(here).times(inside / (inside - then))));
            }
        }
        return kept;
    }
}

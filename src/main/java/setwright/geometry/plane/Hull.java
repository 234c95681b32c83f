package setwright.geometry.plane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The least figure without inward corners round places of the plan. */
final class Hull {
    private Hull() {}

    /** Its corners anticlockwise; fewer than three where the places are on one line. */
    static List<Point2> around(List<Point2> places) {
        List<Point2> sorted = new ArrayList<>(places);
        sorted.sort(Comparator.comparingDouble(Point2::x).thenComparingDouble(Point2::y));
        List<Point2> hull = half(sorted);
        List<Point2> back = new ArrayList<>(sorted);
        java.util.Collections.reverse(back);
        hull.addAll(half(back));
        return hull;
    }

    /** One half from the first place to before the last, turning left all the way. */
    private static List<Point2> half(List<Point2> sorted) {
        List<Point2> half = new ArrayList<>();
        for (Point2 place : sorted) {
            while (half.size() > 1 && !turnsLeft(half.get(half.size() - 2), half.get(half.size() - 1), place)) {
                half.remove(half.size() - 1);
            }
            half.add(place);
        }
        if (!half.isEmpty()) {
            half.remove(half.size() - 1);
        }
        return half;
    }

    private static boolean turnsLeft(Point2 a, Point2 b, Point2 c) {
        return b.minus(a).cross(c.minus(b)) > 0;
    }
}

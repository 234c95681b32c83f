package setwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of an edge that only rises or only falls, for counting what a ray to the right crosses.
 *
 * @param arc the arc that it belongs to, or none where it is straight
 */
record Rise(Point2 from, Point2 to, @Nullable Arc arc) {
    static List<Rise> of(List<Edge> edges) {
        List<Rise> rises = new ArrayList<>();
        for (Edge edge : edges) {
            switch (edge.kind()) {
                case STRAIGHT -> rises.add(new Rise(edge.from(), edge.to(), null));
                case ARC -> split((Arc) edge, rises);
            }
        }
        return List.copyOf(rises);
    }

    /** Cuts an arc at its highest and lowest place. */
    private static void split(Arc arc, List<Rise> rises) {
        double radius = arc.radius();
        List<Point2> cuts = new ArrayList<>();
        for (int side = -1; side <= 1; side += 2) {
            if (arc.faces(0, side)) {
                cuts.add(new Point2(arc.centre().x(), arc.centre().y() + side * radius));
            }
        }
        if (cuts.size() == 2 && arc.fraction(cuts.get(0)) > arc.fraction(cuts.get(1))) {
            cuts.add(cuts.remove(0));
        }
        Point2 from = arc.from();
        for (Point2 cut : cuts) {
            rises.add(new Rise(from, cut, arc));
            from = cut;
        }
        rises.add(new Rise(from, arc.to(), arc));
    }

    /** Counts the lower end and not the upper, so that a corner passed at its height counts once. */
    boolean isCrossedToTheRightOf(Point2 p) {
        if (from.y() > p.y() == to.y() > p.y()) {
            return false;
        }
        return xAt(p.y()) > p.x();
    }

    private double xAt(double y) {
        if (arc == null) {
            return from.x() + (y - from.y()) * (to.x() - from.x()) / (to.y() - from.y());
        }
        double radius = arc.radius();
        double up = y - arc.centre().y();
        double aside = Math.sqrt(Math.max(0, radius * radius - up * up));
        boolean right = arc.anticlockwise() == to.y() > from.y();
        return arc.centre().x() + (right ? aside : -aside);
    }
}

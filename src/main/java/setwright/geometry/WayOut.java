package setwright.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How far a section of the tool that meets a body without hollows must be moved to come clear: by the shortest way up or
 * down, and by the shortest way found level. Along a direction the way is found by Newton's method from outside, where
 * the plane that parts both gives the next length; a level way starts where upright planes part both soonest and is then
 * taken square to the wall found, as long as that shortens it.
 *
 * @param way the direction the tool has to go
 */
record WayOut(double length, Point3 way, ConvexGap left) {
    /** How near in mm to touching a way out ends: far enough for the distance there to be known. */
    private static final double ENOUGH = 1e-5;

    private static final int MOST_STEPS = 40;
    private static final int STARTS = 16;

    /** The shortest level way. */
    static WayOut level(SweptSection tool, Convex body) {
        List<Point3> starts = new ArrayList<>();
        for (int i = 0; i < STARTS; i++) {
            double angle = 2 * Math.PI * i / STARTS;
            starts.add(new Point3(StrictMath.cos(angle), StrictMath.sin(angle), 0));
        }
        starts.sort(Comparator.comparingDouble(start -> free(tool, body, start)));
        return shorter(squarely(tool, body, starts.get(0)), squarely(tool, body, starts.get(1)));
    }

    /** The shorter of the ways up and down. */
    static WayOut upright(SweptSection tool, Convex body) {
        return shorter(along(tool, body, new Point3(0, 0, 1)), along(tool, body, new Point3(0, 0, -1)));
    }

    /** Never less than the shortest way: by the sides of upright boxes alone. */
    static double atMost(SweptSection tool, Convex body) {
        double least = Double.POSITIVE_INFINITY;
        for (Heading heading : Heading.values()) {
            least = Math.min(least, free(tool, body, heading.step(1)));
        }
        return Math.max(0, least);
    }

    private static WayOut shorter(WayOut one, WayOut other) {
        return other.length < one.length ? other : one;
    }

    private static WayOut squarely(SweptSection tool, Convex body, Point3 start) {
        WayOut best = along(tool, body, start);
        for (int i = 0; i < MOST_STEPS; i++) {
            Point3 wall = new Point3(best.left.apart().x(), best.left.apart().y(), 0);
            if (wall.length() == 0) {
                return best;
            }
            WayOut next = along(tool, body, wall.times(1 / wall.length()));
            if (next.length >= best.length - ENOUGH) {
                return shorter(best, next);
            }
            best = next;
        }
        return best;
    }

    /** The way out in a direction of length 1. */
    private static WayOut along(SweptSection tool, Convex body, Point3 way) {
        double length = Math.max(0, free(tool, body, way)) + ENOUGH;
        ConvexGap gap = ConvexGap.between(tool.shifted(way.times(length)), body);
        for (int i = 0; i < MOST_STEPS && gap.distance() > 2 * ENOUGH; i++) {
            double steep = gap.apart().dot(way);
            if (steep <= 0) {
                break;
            }
            double next = Math.max(0, length - (gap.distance() - ENOUGH / 2) / steep);
            ConvexGap nearer = ConvexGap.between(tool.shifted(way.times(next)), body);
            if (next >= length || nearer.meets()) {
                break;
            }
            length = next;
            gap = nearer;
        }
        return new WayOut(length, way, gap);
    }

    /** Moved so far in a direction, a plane square to it parts both. */
    private static double free(SweptSection tool, Convex body, Point3 way) {
        return body.furthest(way).dot(way) - tool.furthest(way.times(-1)).dot(way);
    }
}

package setwright.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * How far what a section of the tool passes through is from a body without hollows. The differences of their places are
 * without hollows too, and its place nearest to the origin is closed in on between up to four corners at a time, each
 * the furthest against the nearest place so far (Gilbert, Johnson and Keerthi, 1988). No distance is believed without its
 * proof: the plane square to the last direction parts both by {@code distance}.
 *
 * @param distance by which a plane parts them, at most {@link #AGREES} mm less than the distance of {@code onTool} and
 *     {@code onBody}; 0 where they meet
 * @param apart the direction from the body to the tool, of length 1 unless they meet
 * @param along how far along the move the tool is there, from 0 to 1
 */
record ConvexGap(double distance, Point3 apart, Point3 onTool, Point3 onBody, double along) {
    /** How far in mm the two bounds of a distance may be apart. */
    static final double AGREES = 1e-8;

    private static final double MEETS = 1e-9;
    private static final int MOST_STEPS = 200;

    boolean meets() {
        return distance <= MEETS;
    }

    static ConvexGap between(SweptSection tool, Convex body) {
        return between(tool, body, Double.POSITIVE_INFINITY);
    }

    /** Stops as soon as both are proved further apart than is of interest. */
    static ConvexGap between(SweptSection tool, Convex body, double interest) {
        Simplex simplex = Simplex.nearest(List.of(corner(tool, body, new Point3(0, 0, -1))));
        double proved = 0;
        Point3 proof = Point3.ORIGIN;
        for (int step = 0; step < MOST_STEPS; step++) {
            Point3 nearest = simplex.place();
            double length = nearest.length();
            if (simplex.around() || length <= MEETS) {
                return of(0, Point3.ORIGIN, simplex);
            }
            Simplex.Corner next = corner(tool, body, nearest.times(-1));
            double parted = next.at().dot(nearest) / length;
            if (parted > proved) {
                proved = parted;
                proof = nearest.times(1 / length);
            }
            if (length - proved <= AGREES || proved > interest || length - parted <= 1e-14 * length) {
                break;
            }
            List<Simplex.Corner> corners = new ArrayList<>(simplex.corners());
            corners.add(next);
            Simplex closer = Simplex.nearest(corners);
            if (!closer.around() && closer.place().length() >= length) {
                break;
            }
            simplex = closer;
        }
        return of(proved, proof, simplex);
    }

    private static ConvexGap of(double distance, Point3 apart, Simplex simplex) {
        return new ConvexGap(distance, apart, simplex.tool(), simplex.body(), simplex.along());
    }

    /** The corner that lies furthest in a direction. */
    private static Simplex.Corner corner(SweptSection tool, Convex body, Point3 way) {
        Point3 on = tool.furthest(way);
        Point3 off = body.furthest(way.times(-1));
        return new Simplex.Corner(on.minus(off), on, off, tool.share(way));
    }
}

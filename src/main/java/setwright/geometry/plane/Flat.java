package setwright.geometry.plane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;

/**
 * A region whose arcs are made straight: outward, so that it holds the region, and inward, so that the region holds
 * it; neither is further from it than {@code flatness} mm.
 */
record Flat(Geometry outward, Geometry inward, double flatness) {
    private static final GeometryFactory PLANE = new GeometryFactory();

    Flat(Region region, double flatness) {
        this(geometry(region, flatness, true), geometry(region, flatness, false), flatness);
    }

    /** The corners of either. */
    List<Point2> corners(boolean outer) {
        return Arrays.stream((outer ? outward : inward).getCoordinates())
                .map(corner -> new Point2(corner.x, corner.y))
                .distinct()
                .toList();
    }

    private static Geometry geometry(Region region, double flatness, boolean outward) {
        List<Polygon> outers = polygons(region.outers(), flatness, outward);
        List<List<LinearRing>> rings = new ArrayList<>();
        outers.forEach(outer -> rings.add(new ArrayList<>()));
        for (Polygon hole : polygons(region.holes(), flatness, !outward)) {
            rings.get(smallestAround(hole, outers)).add(hole.getExteriorRing());
        }
        Polygon[] all = new Polygon[outers.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = PLANE.createPolygon(
                    outers.get(i).getExteriorRing(), rings.get(i).toArray(new LinearRing[0]));
        }
        Geometry geometry = all.length == 1 ? all[0] : PLANE.createMultiPolygon(all);
        return geometry.isValid() ? geometry : GeometryFixer.fix(geometry);
    }

    /** The outer outline, by its number, in which a hole lies: of several the smallest. */
    private static int smallestAround(Polygon hole, List<Polygon> outers) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outers.size() && outers.size() > 1; i++) {
            Polygon outer = outers.get(i);
            if (outer.getArea() < least && outer.covers(hole.getInteriorPoint())) {
                best = i;
                least = outer.getArea();
            }
        }
        return best;
    }

    private static List<Polygon> polygons(List<Outline> outlines, double flatness, boolean outward) {
        return outlines.stream()
                .map(outline -> polygon(outline, flatness, outward))
                .toList();
    }

    private static Polygon polygon(Outline outline, double flatness, boolean outward) {
        List<Coordinate> corners = new ArrayList<>();
        for (Edge edge : outline.edges()) {
            corners.add(new Coordinate(edge.from().x(), edge.from().y()));
            switch (edge.kind()) {
                case STRAIGHT -> {}
                case ARC -> addRound((Arc) edge, outline.anticlockwise() == outward, flatness, corners);
            }
        }
        corners.add(corners.get(0).copy());
        return PLANE.createPolygon(corners.toArray(new Coordinate[0]));
    }

    /** Corners between the ends of an arc: of tangents on its outer side, of chords on its inner side. */
    private static void addRound(Arc arc, boolean outerWay, double flatness, List<Coordinate> corners) {
        double radius = arc.radius();
        double sweep = arc.sweep();
        boolean tangents = arc.anticlockwise() == outerWay;
        int pieces = pieces(radius, Math.abs(sweep), flatness);
        double corner = tangents ? radius / StrictMath.cos(sweep / pieces / 2) : radius;
        for (int i = 0; i < pieces; i++) {
            if (tangents || i > 0) {
                Point2 on = arc.at((i + (tangents ? 0.5 : 0)) / pieces);
                Point2 arm = on.minus(arc.centre()).times(corner / radius);
                corners.add(
                        new Coordinate(arc.centre().x() + arm.x(), arc.centre().y() + arm.y()));
            }
        }
    }

    /** So many that neither a chord nor the corner of two tangents is further from the arc than the flatness. */
    private static int pieces(double radius, double sweep, double flatness) {
        double half = StrictMath.acos(radius / (radius + flatness));
        return Math.max((int) Math.ceil(sweep / (2 * half)), (int) Math.ceil(sweep / 1.5));
    }
}
